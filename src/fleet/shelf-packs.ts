import { nameKey } from "./name-key.ts";
import type { Fleet, PackRow } from "./rows.ts";

/** Tells packs that lie on a shelf: they have no device, no first day in service, no cycles and no tests. */
export function shelfPacks({ runtimeTests }: Pick<Fleet, "runtimeTests">): (pack: PackRow) => boolean {
  const tested = new Set(runtimeTests.map(({ serial }) => nameKey(serial)));
  return ({ serial, device, inService, cycles }) =>
    device === null && inService === null && cycles === null && !tested.has(nameKey(serial));
}
