import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { groupBy } from "../fleet/group-by.ts";
import { seededRandom } from "../maths/random.ts";
import { seedFromText } from "../maths/text-seed.ts";
import type { ItemPlace } from "../supplies/item-place.ts";
import type { ItemPlaces } from "../supplies/item-places.ts";
import { routineDays } from "../supplies/routine-days.ts";
import type { PlaceUse } from "../supplies/use-rates.ts";
import { alikeRuns, drawUses } from "./drawn-uses.ts";
import { NO_USES, PlaceRunner, type PlaceUses, type RunFacts, type RunStart } from "./place-run.ts";
import { type PacedFutures, pacedFutures, paceShared } from "./shared-pace.ts";
import { dealEvents } from "./use-draws.ts";

/** Futures run for an item whose use is uncertain; the chance error of a 95 % level is then about 0.5 %. */
const FUTURES = 2000;
/** Fewer where many places add up, each of which averages out. */
const FUTURES_OF_MANY_PLACES = 1000;
const MANY_PLACES = 500;

/**
 * From so many places on a place is run some 250 times only: futures in which it has equally many uses share runs, dealt
 * anew at every place. Each place's number of uses stays as it is; when they fall varies a few percent less.
 */
const PLACES_THAT_SHARE = 100;
const RUNS_WHERE_SHARED = 250;

/** Units needed in each future of an item, at future * months + month. */
export interface PlaceFutures {
  units: Int32Array;
  futures: number;
}

/**
 * Runs an item's places through futures of their uses. Places are independent given the pace that their duty shares, or
 * the rate that they have in common.
 *
 * @param starts   how the runs of each place begin
 * @param certain  needs of all places without uses, by month
 * @param expiry   expiries without uses, by month; made the expected ones
 */
export function placeFutures(
  ofItem: ItemPlaces,
  starts: readonly (ItemPlace & RunStart)[],
  facts: RunFacts,
  certain: Int32Array,
  expiry: Float64Array,
): PlaceFutures {
  const months = certain.length;
  const end = facts.monthStarts[months]!;
  const many = ofItem.places.length > MANY_PLACES;
  const futures = many ? FUTURES_OF_MANY_PLACES : FUTURES;
  const share = ofItem.places.length < PLACES_THAT_SHARE ? 1 : futures / RUNS_WHERE_SHARED;
  const units = new Int32Array(futures * months);
  for (let i = 0; i < units.length; i++) units[i] = certain[i % months]!;
  const used = starts.filter((place) => place.use !== null && place.from < end);
  const alike = groupBy(used, ({ use }) => paceShared(use!));
  const pacesOf = new Map<string, PacedFutures[]>();
  const run = new UsedPlace(ofItem, facts, units, futures, expiry);
  for (const place of used) {
    const use = place.use!;
    const key = paceShared(use);
    const paces = pacesOf.get(key) ?? pacedFutures(use, alike.get(key)!.length, futures);
    pacesOf.set(key, paces);
    run.addFutures(place, use, paces, share);
  }
  for (let m = 0; m < months; m++) expiry[m] = Math.max(0, expiry[m]!);
  return { units, futures };
}

/** Adds one place after another to the futures: what its uses change against a run without any. */
class UsedPlace {
  private readonly runner: PlaceRunner;
  private readonly months: number;
  /** First day after the horizon. */
  private readonly end: number;
  private readonly uses: PlaceUses = { count: 0, days: new Float64Array(64), units: new Int32Array(64) };
  /** By number of uses: the futures with so many. */
  private readonly futuresWith: number[][] = [];
  private readonly quietNeeds: Int32Array;
  private readonly quietExpiries: Int32Array;
  /** Months in which a run differs from the quiet one, and by how many needs. */
  private readonly at: Int32Array;
  private readonly by: Int32Array;

  constructor(
    private readonly ofItem: ItemPlaces,
    facts: RunFacts,
    private readonly units: Int32Array,
    private readonly futures: number,
    private readonly expiry: Float64Array,
  ) {
    this.months = facts.fitted.length;
    this.end = facts.monthStarts[this.months]!;
    this.runner = new PlaceRunner(facts);
    this.quietNeeds = new Int32Array(this.months);
    this.quietExpiries = new Int32Array(this.months);
    this.at = new Int32Array(this.months);
    this.by = new Int32Array(this.months);
  }

  addFutures(place: ItemPlace & RunStart, use: PlaceUse, paces: readonly PacedFutures[], share: number): void {
    const random = seededRandom(seedFromText(`${this.ofItem.item.key}\n${place.key}`));
    const stretch = { from: place.from, days: Math.min(place.until, this.end) - place.from };
    const sizes = this.ofItem.use!.unitsPerUse;
    const routine = routineDays(place, this.end);
    this.runner.run(place, NO_USES, routine);
    this.quietNeeds.set(this.runner.needs);
    this.quietExpiries.set(this.runner.expiries);
    for (const { rateOf, among } of paces) {
      dealEvents(rateOf(use), stretch.days / DAYS_PER_MONTH, among, random, (future, events) => {
        this.futuresWith[events] ??= [];
        this.futuresWith[events].push(future);
      });
    }
    this.futuresWith.forEach((found, events) => {
      const runs = Math.ceil(found.length / share);
      const alike = alikeRuns(runs, events, random);
      for (let run = 0; run < runs; run++) {
        drawUses(alike, run, stretch, sizes, random, this.uses);
        this.runner.run(place, this.uses, routine);
        this.addRun(found, run, runs);
      }
      found.length = 0;
    });
  }

  /** Adds the last run to every `step`-th of the futures. */
  private addRun(found: readonly number[], first: number, step: number): void {
    const { runner, months, at, by, units, expiry } = this;
    const weight = Math.ceil((found.length - first) / step) / this.futures;
    let changes = 0;
    for (let m = 0; m < months; m++) {
      const more = runner.needs[m]! - this.quietNeeds[m]!;
      if (more !== 0) {
        at[changes] = m;
        by[changes++] = more;
      }
      const expiries = runner.expiries[m]! - this.quietExpiries[m]!;
      if (expiries !== 0) expiry[m] = expiry[m]! + expiries * weight;
    }
    for (let index = first; index < found.length; index += step) {
      const row = found[index]! * months;
      for (let change = 0; change < changes; change++) units[row + at[change]!]! += by[change]!;
    }
  }
}
