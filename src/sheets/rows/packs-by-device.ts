import { nameKey } from "../../fleet/name-key.ts";
import type { Entry } from "./entry.ts";

/**
 * Packs without those that go by their device's name, in a list of devices that gives batteries no numbers, where another
 * list of packs may tell of the same batteries: it names a pack in the device, or packs in no device.
 */
export function withoutPacksToldTwice(packs: readonly Entry[]): Entry[] {
  const [byDevice, others] = [packs.filter(goesByDevice), packs.filter((pack) => !goesByDevice(pack))];
  if (byDevice.length === 0 || others.length === 0) return [...packs];
  const anywhere = others.some(({ values }) => values.device === null);
  const filled = new Set(others.map(({ values }) => nameKey(String(values.device))));
  return packs.filter((pack) => {
    const stays = !goesByDevice(pack) || (!anywhere && !filled.has(nameKey(String(pack.values.device))));
    if (!stays) pack.state.drop(pack.row, "repeat", "Another list tells of the device's battery by its number.");
    return stays;
  });
}

function goesByDevice({ values }: Entry): boolean {
  return values.device !== null && values.serial === values.device;
}
