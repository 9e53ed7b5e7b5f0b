import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item } from "../fleet/item-book.ts";
import type { DeviceRow } from "../fleet/rows.ts";
import { inServiceOn, type WhoTakes } from "../fleet/who-takes.ts";

/** Devices that take the same items (indices into the items given). */
export interface DeviceClass {
  items: readonly number[];
  devices: readonly DeviceRow[];
}

/** Sorts the fleet's devices by the set of items that they take. */
export function deviceClasses(takes: WhoTakes, items: readonly Item[]): DeviceClass[] {
  const itemsOf = new Map<string, number[]>([...takes.devices.keys()].map((key) => [key, []]));
  items.forEach((item, index) => {
    for (const { key } of takes.takers(item)) itemsOf.get(key)?.push(index);
  });
  const groups = groupBy(itemsOf, ([, taken]) => taken.join(","));
  return [...groups.values()].map((group) => ({
    items: group[0]![1],
    devices: group.map(([key]) => takes.devices.get(key)!),
  }));
}

/** How many of a class's devices are in service on a day. */
export function countInService(of: DeviceClass, day: Day): number {
  return of.devices.filter((device) => inServiceOn(device, day)).length;
}
