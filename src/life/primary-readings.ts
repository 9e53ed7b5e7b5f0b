import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet, PackRow, RuntimeTestRow } from "../fleet/rows.ts";
import { primaryEndInForce } from "../fleet/threshold-in-force.ts";
import { median } from "../maths/quantiles.ts";
import { type LineSums, lineSums } from "../maths/random-line.ts";

/** A pack that does not recharge, with what was read of its charge. */
export interface PrimaryPack {
  pack: PackRow;
  /** The day from which it runs down: in_service, else made, else its first reading. */
  start: Day;
  /** Whether that is more than its first reading, so that it was full then. */
  dated: boolean;
  /** Charge left, fraction of a full one, by day. */
  readings: { day: Day; capacity: number }[];
  /** Of readings and of being retired as run down, in years since the start. */
  sums: LineSums;
}

/**
 * Readings of packs that do not recharge, by item key, each item's by serial. A reading is the percent of a test,
 * whatever it says of a full charge; a test stopped early reads nothing. A pack retired as faded was at the
 * threshold then in force.
 *
 * @param fleet  as it is known by as-of
 */
export function primaryPacks(fleet: Fleet, isPrimary: (item: string) => boolean): Map<string, PrimaryPack[]> {
  const tests = groupBy(
    fleet.runtimeTests.filter((test) => test.percent !== null && test.atLeast !== true),
    (test) => nameKey(test.serial),
  );
  const inForce = primaryEndInForce(fleet);
  const result = new Map<string, PrimaryPack[]>();
  const packs = fleet.packs.filter((pack) => pack.item !== null && isPrimary(pack.item));
  for (const [item, list] of groupBy(packs, (pack) => nameKey(pack.item!))) {
    const ready = list.flatMap((pack) => {
      const key = nameKey(pack.serial);
      const readings = (tests.get(key) ?? []).map((test) => ({ day: test.date, capacity: test.percent! / 100 }));
      readings.sort((a, b) => a.day - b.day || a.capacity - b.capacity);
      return primaryPack(pack, readings, inForce) ?? [];
    });
    result.set(
      item,
      ready.sort((a, b) => (nameKey(a.pack.serial) < nameKey(b.pack.serial) ? -1 : 1)),
    );
  }
  return result;
}

function primaryPack(pack: PackRow, tested: PrimaryPack["readings"], inForce: number): PrimaryPack | null {
  const known = pack.inService ?? pack.made;
  const start = known ?? tested[0]?.day ?? null;
  if (start === null) return null;
  // what was read before install was read of another battery, or of one that was still full
  const readings = tested.filter(({ day }) => day >= start);
  const points = readings.map(({ day, capacity }) => ({ x: (day - start) / DAYS_PER_YEAR, y: capacity, weight: 1 }));
  trustPoints(points);
  const { retired, retiredBecause } = pack;
  if (known !== null && retiredBecause === "faded" && retired !== null && retired > start) {
    points.push({ x: (retired - start) / DAYS_PER_YEAR, y: inForce, weight: 1 });
  }
  return { pack, start, dated: known !== null, readings, sums: lineSums(points) };
}

/** Tests of packs that do not recharge that say neither a percent nor a result, in the order of the sheets. */
export function primaryTestsNotUsed(fleet: Fleet, isPrimary: (item: string) => boolean): RuntimeTestRow[] {
  const serials = new Set(
    fleet.packs.filter((pack) => pack.item !== null && isPrimary(pack.item)).map((pack) => nameKey(pack.serial)),
  );
  return fleet.runtimeTests.filter(({ serial, percent, result }) => {
    return percent === null && result === null && serials.has(nameKey(serial));
  });
}

/** Readings from which an odd one can be told from the rest. */
const ENOUGH_TO_TELL = 4;
/** Years within which a rate cannot be told from the noise. */
const TOO_EARLY_YEARS = 0.25;
const USUAL_NOISE = 0.03;
/** Scaled median deviation of a normal variable is its standard deviation. */
const PER_MEDIAN_DEVIATION = 1.4826;
const FAR_OFF = 4;
const WEIGHT_OF_FAR_OFF = 1 / 25;

/** Gives little weight to readings far from the line through full charge with the pack's median rate. */
function trustPoints(points: { x: number; y: number; weight: number }[]): void {
  const rates = points.filter(({ x }) => x >= TOO_EARLY_YEARS).map(({ x, y }) => (1 - y) / x);
  if (rates.length < ENOUGH_TO_TELL) return;
  const rate = median(rates);
  const off = points.map(({ x, y }) => Math.abs(y - (1 - rate * x)));
  const scatter = Math.max(USUAL_NOISE, PER_MEDIAN_DEVIATION * median(off));
  points.forEach((point, i) => {
    if (off[i]! > FAR_OFF * scatter) point.weight = WEIGHT_OF_FAR_OFF;
  });
}
