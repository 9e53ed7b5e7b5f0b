import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet, PackRow } from "../fleet/rows.ts";
import { median } from "../maths/quantiles.ts";
import { arrheniusFactor } from "./arrhenius.ts";
import { type CycleCount, type CycleHistory, cycleHistory } from "./cycle-history.ts";
import type { Moment } from "./evidence.ts";
import { firstTests } from "./first-tests.ts";

/** The two clocks of one pack. */
export interface PackClock {
  /** The day from which age counts: made, else in_service less the item's median gap, or an earlier test; null where unknown. */
  start: Day | null;
  /** Cycles a year from as-of on; null where neither pack, duty, item nor routine tells. */
  cyclesPerYear: number | null;
  /** Cycles counted or projected by a day; null where nothing tells. */
  cyclesAt(day: Day): number | null;
  /** Both clocks on a day, >= 0; the start must be known. */
  momentAt(day: Day): Moment;
}

const REFERENCE_C = 25;

/**
 * Clocks of every pack, by pack key.
 *
 * @param activationEv  activation energy of fade by age, eV
 */
export function packClocks(fleet: Fleet, asOf: Day, activationEv: number): Map<string, PackClock> {
  const devices = new Map(fleet.devices.map((device) => [nameKey(device.device), device]));
  const deviceOf = (pack: PackRow) => (pack.device === null ? undefined : devices.get(nameKey(pack.device)));
  const dutyOf = (pack: PackRow) => nameKey(deviceOf(pack)?.duty ?? "");
  const itemOf = (pack: PackRow) => nameKey(pack.item ?? "");
  // no key holds a line break, and any may hold a blank
  const dutyKey = (pack: PackRow) => `${itemOf(pack)}\n${dutyOf(pack)}`;
  const gaps = medianBy(fleet.packs, itemOf, (pack) =>
    pack.made !== null && pack.inService !== null ? Math.max(0, pack.inService - pack.made) : null,
  );
  const tested = firstTests(fleet, asOf);
  const histories = new Map(cycleHistories(fleet, asOf, tested));
  const rateOf = (pack: PackRow) => histories.get(nameKey(pack.serial))!.ownRate;
  const dutyRates = medianBy(fleet.packs, dutyKey, rateOf);
  const itemRates = medianBy(fleet.packs, itemOf, rateOf);
  const result = new Map<string, PackClock>();
  for (const pack of fleet.packs) {
    const key = nameKey(pack.serial);
    const item = itemOf(pack);
    const start = startOf(pack, gaps.get(item) ?? 0, tested.get(key) ?? null);
    const typicalRate = itemRates.get(item) ?? null;
    const rate = rateOf(pack) ?? dutyRates.get(dutyKey(pack)) ?? typicalRate ?? routineCycles(fleet, dutyOf(pack));
    const celsius = pack.temperatureC ?? deviceOf(pack)?.temperatureC ?? REFERENCE_C;
    const pace = arrheniusFactor(activationEv, celsius, REFERENCE_C);
    const history = histories.get(key)!;
    const cyclesAt = (day: Day) => (rate === null ? null : history.at(day, rate));
    result.set(key, {
      start,
      cyclesPerYear: rate,
      cyclesAt,
      momentAt(day) {
        const years = Math.max(0, (pace * (day - (start ?? day))) / DAYS_PER_YEAR);
        // without a typical rate there is no use clock: wear is time alone
        const useYears = typicalRate === null || typicalRate <= 0 ? years : (cyclesAt(day) ?? 0) / typicalRate;
        return { years, useYears };
      },
    });
  }
  return result;
}

function startOf(pack: PackRow, medianGap: number, firstTest: Day | null): Day | null {
  if (pack.made !== null) return pack.made;
  if (pack.inService === null) return firstTest;
  // what was tested before had been made before
  return Math.min(pack.inService - Math.round(medianGap), firstTest ?? Infinity);
}

function* cycleHistories(fleet: Fleet, asOf: Day, tested: ReadonlyMap<string, Day>): Iterable<[string, CycleHistory]> {
  const read = [
    ...fleet.runtimeTests.map(({ serial, date, cycles }) => ({ serial, day: date, cycles })),
    ...fleet.packs.map(({ serial, cyclesOn, retired, cycles }) => ({
      serial,
      day: cyclesOn ?? retired ?? asOf,
      cycles,
    })),
  ];
  const counts = groupBy(
    read.filter((count): count is CycleCount & { serial: string } => count.cycles !== null),
    ({ serial }) => nameKey(serial),
  );
  for (const pack of fleet.packs) {
    const key = nameKey(pack.serial);
    const counted = counts.get(key) ?? [];
    // of a pack without dates only its tests tell that it is used
    const inUseBy = counted.length === 0 ? (tested.get(key) ?? null) : null;
    yield [key, cycleHistory(pack.inService ?? pack.made ?? inUseBy, counted)];
  }
}

/** Cycles a year that the routine asks of a duty's packs, or null where it names none. */
function routineCycles(fleet: Fleet, duty: string): number | null {
  let sum = 0;
  for (const row of fleet.routine) {
    if (row.cycles !== null && (row.duty === null || nameKey(row.duty) === duty)) sum += row.cycles * row.perYear;
  }
  return sum > 0 ? sum : null;
}

function medianBy(
  packs: readonly PackRow[],
  keyOf: (pack: PackRow) => string,
  valueIn: (pack: PackRow) => number | null,
): Map<string, number> {
  const telling = packs.filter((pack) => valueIn(pack) !== null);
  const groups = groupBy(telling, keyOf);
  return new Map([...groups].map(([key, group]) => [key, median(group.map((pack) => valueIn(pack)!))]));
}
