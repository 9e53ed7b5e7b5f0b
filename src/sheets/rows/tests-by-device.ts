import { groupBy } from "../../fleet/group-by.ts";
import { nameKey } from "../../fleet/name-key.ts";
import { remembered } from "../../fleet/remembered.ts";
import type { PackRow } from "../../fleet/rows.ts";
import type { Entry } from "./entry.ts";

/**
 * Gives the tests of a log that names devices, and no batteries, to the battery that was in the device on the day. Where
 * the packs tell of none or of several there, the test keeps the device's name, which a finding then calls unknown.
 */
export function giveTestsToPacks(tests: readonly Entry[], packs: readonly Entry[]): void {
  const serials = new Set(packs.map(({ values }) => nameKey(String(values.serial))));
  const placed = packs.filter(({ values }) => values.device !== null);
  const inDevice = groupBy(placed, ({ values }) => nameKey(String(values.device)));
  // few serials stand in many rows
  const isPack = remembered((serial: string) => serials.has(nameKey(serial)));
  for (const { values: test } of tests) {
    const name = String(test.serial);
    if (isPack(name)) continue;
    const there = (inDevice.get(nameKey(name)) ?? []).filter(({ values }) => {
      const { inService, retired } = values as Partial<PackRow>;
      return (inService ?? -Infinity) <= Number(test.date) && (retired ?? Infinity) >= Number(test.date);
    });
    if (there.length === 1) test.serial = there[0]!.values.serial;
  }
}
