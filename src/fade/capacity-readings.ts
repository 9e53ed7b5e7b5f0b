import type { Day } from "../calendar/day.ts";
import { catalogueRowsByItem, firstFact } from "../fleet/catalogue-facts.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet, PackRow, RuntimeTestRow, Source } from "../fleet/rows.ts";
import { median } from "../maths/quantiles.ts";

/** One measured capacity, as a fraction of rated. */
export interface CapacityReading {
  day: Day;
  capacity: number;
  source: Source;
}

/** One-sided knowledge: capacity on that day at least, or below, a fraction of rated. */
export interface CapacityBound {
  day: Day;
  threshold: number;
  below: boolean;
}

/** What the tests of one pack say of its capacity. */
export interface PackReadings {
  readings: CapacityReading[];
  bounds: CapacityBound[];
  /** The day of a failed test that no pass of a later day has cleared, or null: a measurement alone clears none. */
  failedOn: Day | null;
  /** True where the item has no rating and its early tests stand in for it. */
  ratedByEarlyTests: boolean;
  /** Tests that say nothing of capacity, by day. */
  leftOut: LeftOutTest[];
}

/** A test that says nothing of capacity, and why: words that follow "the test is". */
export interface LeftOutTest {
  test: RuntimeTestRow;
  because: "not from a full charge" | "too cold or too hot" | "in a measure that nothing rates" | "far above new packs";
}

/**
 * Cell temperatures outside which a capacity is not comparable with the rating. Rated capacity is measured at
 * 20 ± 5 °C (IEC 61960-3); 5 °C below and 15 °C above that are let through, for want of a source.
 */
const COMPARABLE_FROM_C = 10;
const COMPARABLE_TO_C = 40;

/** Days after the start of service within which a test may stand in for a missing rating. */
const EARLY_DAYS = 180;
/** Above this share of what new packs gave, a measurement is absurd, as it is above this share of a rating. */
const MOST_OF_EARLY = 1.3;

type Measure = "wh" | "ah" | "minutes";

/** Capacities of a new pack of an item, by measure: by the catalogue, and by its early tests; null where it has none. */
interface Ratings {
  rated: Record<Measure, number | null>;
  early: Record<Measure, number | null>;
}

/**
 * Readings of every pack, by pack key.
 *
 * A runtime test at a load of P watts for m minutes gives P·m/60 Wh against the rated Wh; minutes alone stand
 * against the rated minutes; percent as it stands. For a measure without a rating the item's median first test within
 * 180 days of service takes its place.
 *
 * @param thresholdInForce  fraction of rated below which a test was failed
 */
export function readingsByPack(fleet: Fleet, thresholdInForce: number): Map<string, PackReadings> {
  const testsOf = groupBy(fleet.runtimeTests, (test) => nameKey(test.serial));
  for (const list of testsOf.values()) list.sort((a, b) => a.date - b.date || a.source.line - b.source.line);
  const ratings = ratingsByItem(fleet, testsOf);
  const result = new Map<string, PackReadings>();
  for (const pack of fleet.packs) {
    const key = nameKey(pack.serial);
    result.set(key, readPack(testsOf.get(key) ?? [], ratings.get(nameKey(pack.item ?? ""))!, thresholdInForce));
  }
  return result;
}

function readPack(tests: readonly RuntimeTestRow[], ratings: Ratings, thresholdInForce: number): PackReadings {
  const result: PackReadings = { readings: [], bounds: [], failedOn: null, ratedByEarlyTests: false, leftOut: [] };
  for (const test of tests) {
    const because = incomparable(test);
    if (because !== null) {
      result.leftOut.push({ test, because });
      continue;
    }
    if (test.result === "fail") result.failedOn = test.date;
    else if (test.result === "pass" && result.failedOn !== test.date) result.failedOn = null;
    const rated = test.percent !== null ? test.percent / 100 : shareOf(test, ratings.rated);
    const capacity = rated ?? shareOf(test, ratings.early);
    if (rated === null && capacity !== null && capacity > MOST_OF_EARLY) {
      result.leftOut.push({ test, because: "far above new packs" });
    } else if (capacity !== null) {
      if (rated === null) result.ratedByEarlyTests = true;
      if (test.atLeast) result.bounds.push({ day: test.date, threshold: capacity, below: false });
      else result.readings.push({ day: test.date, capacity, source: test.source });
    } else if (test.result !== null) {
      result.bounds.push({ day: test.date, threshold: thresholdInForce, below: test.result === "fail" });
    } else {
      result.leftOut.push({ test, because: "in a measure that nothing rates" });
    }
  }
  return result;
}

/** Why a test cannot be compared with a rating, or null where it can. */
function incomparable(test: RuntimeTestRow): LeftOutTest["because"] | null {
  if (test.fullCharge === false) return "not from a full charge";
  const celsius = test.temperatureC;
  return celsius === null || (celsius >= COMPARABLE_FROM_C && celsius <= COMPARABLE_TO_C)
    ? null
    : "too cold or too hot";
}

/** A test as a share of what a new pack holds, in the first measure that is known of both; null where there is none. */
function shareOf(test: RuntimeTestRow, ofNew: Ratings["rated"]): number | null {
  for (const measure of MEASURES) {
    const value = VALUES[measure](test);
    const full = ofNew[measure];
    if (value !== null && full !== null) return value / full;
  }
  return null;
}

function energyOf(test: RuntimeTestRow): number | null {
  if (test.wh !== null) return test.wh;
  return test.loadW !== null && test.minutes !== null ? (test.loadW * test.minutes) / 60 : null;
}

const MEASURES: readonly Measure[] = ["wh", "ah", "minutes"];
const VALUES: Record<Measure, (test: RuntimeTestRow) => number | null> = {
  wh: energyOf,
  ah: (test) => test.ah,
  minutes: (test) => test.minutes,
};

function ratingsByItem(fleet: Fleet, testsOf: Map<string, RuntimeTestRow[]>): Map<string, Ratings> {
  const rowsOf = catalogueRowsByItem(fleet);
  const packsOf = groupBy(fleet.packs, (pack) => nameKey(pack.item ?? ""));
  const result = new Map<string, Ratings>();
  for (const [item, packs] of packsOf) {
    const rows = rowsOf.get(item) ?? [];
    const rated = {
      wh: firstFact(rows, (row) => row.ratedWh),
      ah: firstFact(rows, (row) => row.ratedAh),
      minutes: firstFact(rows, (row) => row.ratedMinutes),
    };
    const early = { wh: null, ah: null, minutes: null } as Ratings["early"];
    for (const measure of MEASURES) {
      if (rated[measure] === null) early[measure] = earlyMedian(packs, testsOf, measure);
    }
    result.set(item, { rated, early });
  }
  return result;
}

/** Median over packs of the first comparable test within EARLY_DAYS of service, or null where there is none. */
function earlyMedian(packs: readonly PackRow[], testsOf: Map<string, RuntimeTestRow[]>, measure: Measure) {
  const values: number[] = [];
  for (const pack of packs) {
    const start = pack.inService ?? pack.made;
    if (start === null) continue;
    for (const test of testsOf.get(nameKey(pack.serial)) ?? []) {
      const value = incomparable(test) === null && !test.atLeast ? VALUES[measure](test) : null;
      if (value === null) continue;
      if (test.date <= start + EARLY_DAYS) values.push(value);
      break;
    }
  }
  return values.length > 0 ? median(values) : null;
}
