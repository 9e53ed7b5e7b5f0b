import { median } from "simple-statistics";
import type { Day } from "../calendar/day.ts";
import { catalogueRowsByItem, firstFact } from "../fleet/catalogue-facts.ts";
import { groupBy } from "../fleet/group-by.ts";
import { type Fleet, nameKey, type PackRow, type RuntimeTestRow, type Source } from "../fleet/rows.ts";

/** One measured capacity, as a fraction of rated. */
interface CapacityReading {
  day: Day;
  capacity: number;
  source: Source;
}

/** One-sided knowledge: capacity on that day at least, or below, a fraction of rated. */
interface CapacityBound {
  day: Day;
  threshold: number;
  below: boolean;
}

/** What the tests of one pack say of its capacity. */
export interface PackReadings {
  readings: CapacityReading[];
  bounds: CapacityBound[];
  /** The day of a failed test that no later pass or measurement has cleared, or null. */
  failedOn: Day | null;
  /** True where the item has no rating and its early tests stand in for it. */
  ratedByEarlyTests: boolean;
  /** Tests not used: not from a full charge, or at a temperature at which capacity is not comparable. */
  leftOut: number;
}

/**
 * Cell temperatures outside which a capacity is not comparable with the rating. Rated capacity is measured at
 * 20 ± 5 °C (IEC 61960-3); 5 °C below and 15 °C above that are let through, for want of a source.
 */
const COMPARABLE_FROM_C = 10;
const COMPARABLE_TO_C = 40;

/** Days after the start of service within which a test may stand in for a missing rating. */
const EARLY_DAYS = 180;

type Measure = "wh" | "ah" | "minutes";

/** Rated values of an item; null where neither the catalogue nor early tests give one. */
interface Ratings {
  rated: Record<Measure, number | null>;
  byEarlyTests: boolean;
}

/**
 * Readings of every pack, by pack key.
 *
 * A runtime test at a load of P watts for m minutes gives P·m/60 Wh against the rated Wh; minutes alone stand
 * against the rated minutes; percent as it stands. Without a rating the item's median first test within 180 days
 * of service takes its place.
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
  const result: PackReadings = { readings: [], bounds: [], failedOn: null, ratedByEarlyTests: false, leftOut: 0 };
  for (const test of tests) {
    if (!comparable(test)) {
      result.leftOut++;
      continue;
    }
    const capacity = capacityOf(test, ratings);
    if (test.result === "fail") result.failedOn = test.date;
    else if (test.result === "pass") result.failedOn = null;
    if (capacity !== null) {
      if (test.percent === null && ratings.byEarlyTests) result.ratedByEarlyTests = true;
      if (test.atLeast) result.bounds.push({ day: test.date, threshold: capacity, below: false });
      else result.readings.push({ day: test.date, capacity, source: test.source });
    } else if (test.result !== null) {
      result.bounds.push({ day: test.date, threshold: thresholdInForce, below: test.result === "fail" });
    }
  }
  return result;
}

function comparable(test: RuntimeTestRow): boolean {
  if (test.fullCharge === false) return false;
  return test.temperatureC === null || (test.temperatureC >= COMPARABLE_FROM_C && test.temperatureC <= COMPARABLE_TO_C);
}

function capacityOf(test: RuntimeTestRow, { rated }: Ratings): number | null {
  if (test.percent !== null) return test.percent / 100;
  const wh = energyOf(test);
  if (wh !== null && rated.wh !== null) return wh / rated.wh;
  if (test.ah !== null && rated.ah !== null) return test.ah / rated.ah;
  if (test.minutes !== null && rated.minutes !== null) return test.minutes / rated.minutes;
  return null;
}

function energyOf(test: RuntimeTestRow): number | null {
  if (test.wh !== null) return test.wh;
  return test.loadW !== null && test.minutes !== null ? (test.loadW * test.minutes) / 60 : null;
}

const MEASURES: Record<Measure, (test: RuntimeTestRow) => number | null> = {
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
    const byEarlyTests = rated.wh === null && rated.ah === null && rated.minutes === null;
    if (byEarlyTests) {
      for (const measure of ["wh", "ah", "minutes"] as const) rated[measure] = earlyMedian(packs, testsOf, measure);
    }
    result.set(item, { rated, byEarlyTests });
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
      const value = comparable(test) && !test.atLeast ? MEASURES[measure](test) : null;
      if (value === null) continue;
      if (test.date <= start + EARLY_DAYS) values.push(value);
      break;
    }
  }
  return values.length > 0 ? median(values) : null;
}
