import type { Plan, Reading } from "../src/index.ts";

/** One capacity reading of a pack, to be drawn as a dot. */
export interface Dot {
  day: number;
  /** Percent of rated capacity. */
  percent: number;
}

type Test = Reading["fleet"]["runtimeTests"][number];
type Item = Reading["fleet"]["catalogue"][number];

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();

/**
 * The readings of a pack that its rating turns into a share of capacity (design: load in watts times minutes over
 * 60 are watt-hours; minutes alone stand against the rated minutes). Tests without such a rating are not drawn,
 * nor those that were stopped early or did not start from a full charge.
 */
export function dotsOfPack(pack: Plan["packs"][number], reading: Reading): Dot[] {
  const rating = reading.fleet.catalogue.find((row) => same(row.item, pack.item)) ?? null;
  const dots: Dot[] = [];
  for (const test of reading.fleet.runtimeTests) {
    if (!same(test.serial, pack.serial) || test.fullCharge === false || test.atLeast === true) continue;
    const percent = percentOf(test, rating);
    if (percent !== null) dots.push({ day: test.date, percent });
  }
  return dots.sort((a, b) => a.day - b.day);
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
