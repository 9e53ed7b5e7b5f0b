import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { type Fleet, nameKey, type PackRow } from "../fleet/rows.ts";
import { thresholdInForce } from "../fleet/threshold-in-force.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { seedFromText } from "../maths/text-seed.ts";
import { type PackReadings, readingsByPack } from "./capacity-readings.ts";
import { curveFromCoordinates } from "./curve.ts";
import { type PackEvidence, packEvidence } from "./evidence.ts";
import { DRAWS, type ItemFit } from "./item-fit.ts";
import { borrowedPrior, usualPrior, withStatedLife } from "./item-prior.ts";
import { keptFit } from "./kept-fits.ts";
import { learnedOwnSpread } from "./learned-spread.ts";
import { forecastTables } from "./node-tables.ts";
import { type PackClock, packClocks } from "./pack-clock.ts";
import { MODEL_ERROR } from "./priors.ts";
import { statedLives } from "./stated-life.ts";
import { timeStretch } from "./time-stretch.ts";
import type { FadeGroup } from "./types.ts";

/** One pack with its clocks, its readings and the evidence made from them. */
export interface FadingPack {
  pack: PackRow;
  clock: PackClock;
  readings: PackReadings;
  evidence: PackEvidence;
}

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
 * Fits already made, by fleet, as-of and activation energy: a planner who tries other choices on the same sheets does
 * not wait again.
 */
const made = new WeakMap<Fleet, Map<string, FadingItem[]>>();

/**
 * Fits every item's fade. Only what was known by as-of speaks: later tests and retirements are left out. Of what
 * a planner chooses only as-of and the activation energy enter, so that the fit is made once and kept while the fleet is.
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
  ofFleet.set(key, items);
  return items;
}

/** What of a planner's choices the fit hangs on. */
type FadePolicy = Pick<Policy, "asOf" | "activationEnergyEv">;

function fitItems(fleet: Fleet, policy: FadePolicy, isRechargeable: (item: string) => boolean): FadingItem[] {
  const { asOf, activationEnergyEv } = policy;
  const known = knownBy(fleet, asOf);
  const inForce = thresholdInForce(known);
  const readings = readingsByPack(known, inForce);
  const clocks = packClocks(known, asOf, activationEnergyEv);
  const fading = known.packs
    .filter(({ item }) => item !== null && isRechargeable(item))
    .map((pack): FadingPack => {
      const clock = clocks.get(nameKey(pack.serial))!;
      const read = readings.get(nameKey(pack.serial))!;
      return { pack, clock, readings: read, evidence: evidenceOf(pack, read, clock, inForce) };
    });
  const items = groupBy(fading, ({ pack }) => nameKey(pack.item!));
  const stated = statedLives(known, clocks);
  const drafts = [...items.keys()].sort().map((key): Draft => {
    const packs = items.get(key)!.sort((a, b) => (nameKey(a.pack.serial) < nameKey(b.pack.serial) ? -1 : 1));
    const prior = withStatedLife(usualPrior(), stated(key));
    return { key, packs, coordinates: keptFit(evidenceIn(packs), prior), borrowsFrom: [] };
  });
  return drafts.map((draft) => finish(borrowing(draft, drafts, stated(draft.key)), inForce));
}

/** An item's fit on the way: its curves' coordinates, and the items whose readings they lean on beside its own. */
interface Draft {
  key: string;
  packs: FadingPack[];
  coordinates: Float64Array[];
  borrowsFrom: string[];
}

/** Readings below which an item's curve leans on the fleet's other items. */
const FEW_READINGS = 24;

const evidenceIn = (packs: readonly FadingPack[]) => packs.map((pack) => pack.evidence);
const readingsIn = (packs: readonly FadingPack[]) =>
  packs.reduce((sum, pack) => sum + pack.readings.readings.length, 0);

/** Fits an item of few readings anew, with a prior borrowed from items that have more. */
function borrowing(draft: Draft, drafts: readonly Draft[], statedYears: number | null): Draft {
  if (readingsIn(draft.packs) >= FEW_READINGS) return draft;
  const others = drafts.filter((other) => readingsIn(other.packs) >= FEW_READINGS);
  if (others.length === 0) return draft;
  const prior = withStatedLife(borrowedPrior(others.map((other) => other.coordinates)), statedYears);
  return {
    ...draft,
    coordinates: keptFit(evidenceIn(draft.packs), prior),
    borrowsFrom: others.map((other) => other.packs[0]!.pack.item!.trim()),
  };
}

function finish({ key, packs, coordinates, borrowsFrom }: Draft, inForce: number): FadingItem {
  const chosen = spacedOut(coordinates, curvesFor(packs.length));
  // in an order that goes with no other item's
  const order = shuffled(chosen.length, seededRandom(seedFromText(`curves ${key}`)));
  const tables = Array.from(order, (i) => forecastTables(curveFromCoordinates(chosen[i]!)));
  const seed = seedFromText(`stretch ${key}`);
  const own = learnedOwnSpread(packs, { tables }, inForce, seed);
  const fit = { tables, stretch: timeStretch(DRAWS, seed, { common: MODEL_ERROR.common, own }) };
  const readings = readingsIn(packs);
  const completedLives = packs.filter((pack) => pack.pack.retiredBecause === "faded").length;
  const item = packs[0]!.pack.item!.trim();
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
      parameters: { ...middleParameters(fit), ownSpread: own },
      basis: readings === 0 ? "typical" : "pooled",
    },
  };
}

/** Curves under an item's forecasts: all draws have their own where packs are few, and share one of these counts where many. */
const CURVES = [DRAWS, DRAWS / 2, DRAWS / 4, DRAWS / 8];
/** Packs times curves up to which a count is taken: the fewer curves, the more packs speak for each. */
const CURVES_FOR_PACKS = 10_000;

const curvesFor = (packs: number) => CURVES.find((curves) => packs * curves <= CURVES_FOR_PACKS) ?? CURVES.at(-1)!;

/** `count` of the list, evenly spaced; all of it where there are no more. */
function spacedOut<T>(list: readonly T[], count: number): T[] {
  const step = Math.max(1, Math.floor(list.length / count));
  return list.filter((_, i) => i % step === Math.floor(step / 2));
}

/** Medians over the draws, by name; for people and for the record, never used in a forecast. */
function middleParameters(fit: ItemFit): Record<string, number> {
  const middle = (pick: (curve: ItemFit["tables"][number]["curve"]) => number) => {
    const values = fit.tables.map((table) => pick(table.curve)).sort((a, b) => a - b);
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

function evidenceOf(pack: PackRow, readings: PackReadings, clock: PackClock, inForce: number): PackEvidence {
  if (clock.start === null) return packEvidence([], []);
  const bounds = readings.bounds.map(({ day, ...bound }) => ({ ...clock.momentAt(day), ...bound }));
  if (pack.retiredBecause === "faded" && pack.retired !== null) {
    bounds.push({ ...clock.momentAt(pack.retired), threshold: inForce, below: true });
  }
  return packEvidence(
    readings.readings.map(({ day, capacity }) => ({ ...clock.momentAt(day), capacity })),
    bounds,
  );
}

/** The fleet as it was known on a day: later tests, counts and retirements had not happened. */
function knownBy(fleet: Fleet, asOf: Day): Fleet {
  return {
    ...fleet,
    runtimeTests: fleet.runtimeTests.filter((test) => test.date <= asOf),
    packs: fleet.packs.map((pack) => {
      const retiredLater = pack.retired !== null && pack.retired > asOf;
      const countedLater = pack.cyclesOn !== null && pack.cyclesOn > asOf;
      if (!retiredLater && !countedLater) return pack;
      return {
        ...pack,
        ...(retiredLater ? { retired: null, retiredBecause: null } : {}),
        ...(countedLater ? { cycles: null, cyclesOn: null } : {}),
      };
    }),
  };
}
