import type { Day } from "../calendar/day.ts";
import type { Fleet } from "../fleet/rows.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { seedFromText } from "../maths/text-seed.ts";
import { curveFromCoordinates, type FleetCurve } from "./curve.ts";
import { DRAWS, type ItemFit } from "./item-fit.ts";
import { borrowedPrior, usualPrior, withStatedLife } from "./item-prior.ts";
import { type FadePolicy, type FadingPack, type ItemEvidence, itemsWithEvidence } from "./items-with-evidence.ts";
import { type FitTask, isKept, keptFit } from "./kept-fits.ts";
import { learnedOwnSpread } from "./learned-spread.ts";
import { nodeTables } from "./node-tables.ts";
import { MODEL_ERROR } from "./priors.ts";
import { speakingCurves } from "./speaking-curves.ts";
import { timeStretch } from "./time-stretch.ts";
import type { FadeGroup } from "./types.ts";

/** An item with its packs, in service and retired, and the curves fitted to them. */
export interface FadingItem {
  item: string;
  packs: FadingPack[];
  fit: ItemFit;
  /** Packs retired as faded: lives seen to their end. */
  completedLives: number;
  /** Items whose readings the curve leans on, having few of its own. */
  borrowsFrom: string[];
  group: FadeGroup;
}

/**
 * Fits already made, by fleet, as-of and activation energy, the last asked for last: a planner who goes to and fro
 * between two choices on the same sheets does not wait again.
 */
const made = new WeakMap<Fleet, Map<string, FadingItem[]>>();
/** Choices kept for a fleet: the tables of one take some 25 MB on the sample. */
const CHOICES_KEPT = 2;

/**
 * Fits every item's fade. Only what was known by as-of speaks: later tests and retirements are left out. Of what
 * a planner chooses only as-of and the activation energy enter, so that a fit serves for whatever else is chosen.
 *
 * @param fleet           not changed while it is in use
 * @param policy          as-of, and the activation energy of fade by age
 * @param isRechargeable  whether packs of an item fade by use, as the fleet's catalogue has it; others are left out
 */
export function fadeItems(fleet: Fleet, policy: FadePolicy, isRechargeable: (item: string) => boolean): FadingItem[] {
  const ofFleet = made.get(fleet) ?? new Map<string, FadingItem[]>();
  made.set(fleet, ofFleet);
  const key = `${policy.asOf} ${policy.activationEnergyEv}`;
  const items = ofFleet.get(key) ?? fitItems(fleet, policy, isRechargeable);
  ofFleet.delete(key);
  ofFleet.set(key, items);
  const [oldest] = ofFleet.keys();
  if (ofFleet.size > CHOICES_KEPT) ofFleet.delete(oldest!);
  return items;
}

function fitItems(fleet: Fleet, policy: FadePolicy, isRechargeable: (item: string) => boolean): FadingItem[] {
  const { items, inForce } = itemsWithEvidence(fleet, policy, isRechargeable);
  const drafts = items.map(draftOf);
  return drafts.map((draft) => finish(borrowing(draft, drafts), policy.asOf, inForce));
}

/**
 * Fits that `fadeItems` would make next: whoever makes them side by side, by `fitFor`, and hands them in, by `keepFit`,
 * then asks again, since items of few readings are fitted a second time, with what the others taught. Empty once all
 * are kept.
 */
export function fitsToMake(fleet: Fleet, policy: FadePolicy, isRechargeable: (item: string) => boolean): FitTask[] {
  const { items } = itemsWithEvidence(fleet, policy, isRechargeable);
  const first = items.map(taskOf).filter((task) => !isKept(task));
  if (first.length > 0) return first;
  const drafts = items.map(draftOf);
  const second = drafts.flatMap((draft) => {
    const lenders = lendersTo(draft, drafts);
    return lenders.length === 0 ? [] : [borrowedTask(draft, lenders)];
  });
  return second.filter((task) => !isKept(task));
}

/** An item's fit on the way: its curves' coordinates, and the items whose readings they lean on beside its own. */
interface Draft {
  of: ItemEvidence;
  /** What its first fit heard. */
  task: FitTask;
  coordinates: Float64Array[];
  borrowsFrom: string[];
}

const taskOf = ({ packs, stated }: ItemEvidence): FitTask => ({
  packs: packs.map(({ evidence }) => evidence),
  prior: withStatedLife(usualPrior(), stated),
});

function draftOf(of: ItemEvidence): Draft {
  const task = taskOf(of);
  return { of, task, coordinates: keptFit(task), borrowsFrom: [] };
}

/** Readings below which an item's curve leans on the fleet's other items. */
const FEW_READINGS = 24;

const readingsIn = (packs: readonly FadingPack[]) =>
  packs.reduce((sum, pack) => sum + pack.readings.readings.length, 0);
const hasFew = ({ of: { packs } }: Draft) => readingsIn(packs) < FEW_READINGS;

/** Fits an item of few readings anew, with a prior borrowed from items that have more. */
function borrowing(draft: Draft, drafts: readonly Draft[]): Draft {
  const lenders = lendersTo(draft, drafts);
  if (lenders.length === 0) return draft;
  const coordinates = keptFit(borrowedTask(draft, lenders));
  return { ...draft, coordinates, borrowsFrom: lenders.map(({ of }) => of.name) };
}

/** Items that an item of few readings leans on; none where it has enough itself. */
function lendersTo(draft: Draft, drafts: readonly Draft[]): Draft[] {
  return hasFew(draft) ? drafts.filter((other) => !hasFew(other)) : [];
}

/** The second fit of an item of few readings. */
function borrowedTask({ of }: Draft, lenders: readonly Draft[]): FitTask {
  const lent = lenders.map(({ task, coordinates }) => ({ under: task.prior, coordinates }));
  return { ...taskOf(of), prior: withStatedLife(borrowedPrior(lent), of.stated) };
}

function finish(
  { of: { key, name: item, packs }, coordinates, borrowsFrom }: Draft,
  asOf: Day,
  inForce: number,
): FadingItem {
  const curves = coordinates.map(curveFromCoordinates);
  const chosen = speakingCurves(curves, packs, asOf, inForce);
  // in an order that goes with no other item's
  const order = shuffled(chosen.length, seededRandom(seedFromText(`curves ${key}`)));
  const tables = Array.from(order, (i) => nodeTables(curves[chosen[i]!]!));
  const seed = seedFromText(`stretch ${key}`);
  const own = learnedOwnSpread(packs, { tables }, inForce, seed);
  const fit = { tables, stretch: timeStretch(DRAWS, seed, { common: MODEL_ERROR.common, own }) };
  const readings = readingsIn(packs);
  const completedLives = packs.filter((pack) => pack.pack.retiredBecause === "faded").length;
  const inService = packs.filter((pack) => pack.pack.retired === null).length;
  return {
    item,
    packs,
    fit,
    completedLives,
    borrowsFrom,
    group: {
      item,
      packs: inService,
      readings,
      completedLives,
      parameters: { ...middleParameters(curves), ownSpread: own },
      basis: readings === 0 ? "typical" : "pooled",
    },
  };
}

/** Medians over the draws, by name; for people and for the record, never used in a forecast. */
function middleParameters(curves: readonly FleetCurve[]): Record<string, number> {
  const middle = (pick: (curve: FleetCurve) => number) => {
    const values = curves.map(pick).sort((a, b) => a - b);
    return values[Math.floor(values.length / 2)]!;
  };
  return {
    startCapacity: middle((curve) => curve.startCapacity),
    startSpread: middle((curve) => curve.startSpread),
    medianLifeYears: middle((curve) => Math.exp(curve.logMedianLife)),
    lifeSpread: middle((curve) => curve.lifeSpread),
    slowPower: middle((curve) => curve.slowPower),
    kneeShare: middle((curve) => 1 / (1 + Math.exp(-curve.kneeLogit))),
    kneePower: middle((curve) => curve.kneePower),
    noise: middle((curve) => curve.noise),
    earlyRise: middle((curve) => curve.earlyRise),
    hardUseShare: middle((curve) => curve.hardUseShare),
    useShare: middle((curve) => curve.useShare),
  };
}
