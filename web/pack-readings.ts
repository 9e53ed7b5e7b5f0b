import type { Plan, Reading } from "../src/index.ts";

/** One capacity reading of a pack, to be drawn as a dot. */
export interface Dot {
  day: number;
  /** Percent of rated capacity. */
  percent: number;
}

type Pack = Plan["packs"][number];
type Test = Reading["fleet"]["runtimeTests"][number];
type Item = Reading["fleet"]["catalogue"][number];

/** Names are the same without regard to case and outer blanks, as the engine reads them. */
export function nameKey(name: string): string {
  return name.trim().toLowerCase();
}

const byReading = new WeakMap<Reading, Map<string, Test[]>>();

/**
 * The readings of a pack that its rating turns into a share of capacity (design: load in watts times minutes over
 * 60 are watt-hours; minutes alone stand against the rated minutes). Tests without such a rating are not drawn,
 * nor those that were stopped early or did not start from a full charge.
 */
export function dotsOfPack(pack: Pack, reading: Reading): Dot[] {
  const rating = reading.fleet.catalogue.find((row) => nameKey(row.item) === nameKey(pack.item)) ?? null;
  const dots: Dot[] = [];
  for (const test of testsBySerial(reading).get(nameKey(pack.serial)) ?? []) {
    if (test.fullCharge === false || test.atLeast === true) continue;
    const percent = percentOf(test, rating);
    if (percent !== null) dots.push({ day: test.date, percent });
  }
  return dots.sort((a, b) => a.day - b.day);
}

function testsBySerial(reading: Reading): Map<string, Test[]> {
  const known = byReading.get(reading);
  if (known) return known;
  const tests = new Map<string, Test[]>();
  for (const test of reading.fleet.runtimeTests) {
    const key = nameKey(test.serial);
    const list = tests.get(key);
    if (list) list.push(test);
    else tests.set(key, [test]);
  }
  byReading.set(reading, tests);
  return tests;
}

function percentOf(test: Test, rating: Item | null): number | null {
  if (test.percent !== null) return test.percent;
  const share = (measured: number | null, rated: number | null | undefined) =>
    measured !== null && rated ? (100 * measured) / rated : null;
  const wattHours = test.wh ?? (test.loadW !== null && test.minutes !== null ? (test.loadW * test.minutes) / 60 : null);
  return (
    share(wattHours, rating?.ratedWh) ?? share(test.ah, rating?.ratedAh) ?? share(test.minutes, rating?.ratedMinutes)
  );
}
