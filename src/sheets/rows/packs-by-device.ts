import { groupBy } from "../../fleet/group-by.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { Entry } from "./entry.ts";

/**
 * Packs without those that go by their device's name, in a list of devices that gives batteries no numbers, where another
 * list of packs may tell of the same batteries: it names a pack in the device, or packs in no device. What that one leaves
 * blank of the only pack in the device, such as when it was installed, the list of devices tells.
 */
export function withoutPacksToldTwice(packs: readonly Entry[]): Entry[] {
  const [byDevice, others] = [packs.filter(goesByDevice), packs.filter((pack) => !goesByDevice(pack))];
  if (byDevice.length === 0 || others.length === 0) return [...packs];
  const anywhere = others.some(({ values }) => values.device === null);
  const filled = groupBy(others, ({ values }) => nameKey(String(values.device)));
  return packs.filter((pack) => {
    if (!goesByDevice(pack)) return true;
    const there = filled.get(nameKey(String(pack.values.device))) ?? [];
    if (!anywhere && there.length === 0) return true;
    const [one, ...more] = there.filter(({ values }) => values.retired === null);
    if (one && more.length === 0 && pack.values.retired === null)
      for (const [field, told] of Object.entries(pack.values)) one.values[field] ??= told;
    pack.state.drop(pack.row, "repeat", "Another list tells of the device's battery by its number.");
    return false;
  });
}

function goesByDevice({ values }: Entry): boolean {
  return values.device !== null && values.serial === values.device;
}
