import { nameKey } from "../../fleet/name-key.ts";
import type { BuiltTable } from "./build-entries.ts";
import type { Entry } from "./entry.ts";

/**
 * Gives each vehicle one name in all sheets: a device's own where one is called like it; else with its site wherever a
 * sheet names the vehicle alone and there is only one of that name.
 */
export function settleVehicleNames(byKind: ReadonlyMap<string, readonly Entry[]>, built: readonly BuiltTable[]): void {
  const vehicles = new Map<string, string>();
  for (const { joined } of built.flatMap(({ readers }) => readers.flat()))
    for (const [name, vehicle] of joined ?? []) vehicles.set(name, vehicle);
  if (vehicles.size === 0) return;
  const devices = new Set((byKind.get("devices") ?? []).map(({ values }) => nameKey(String(values.device))));
  const homes = new Map<string, string[]>();
  for (const [name, vehicle] of vehicles) homes.set(nameKey(vehicle), [...(homes.get(nameKey(vehicle)) ?? []), name]);
  for (const { values } of [...byKind.values()].flat()) {
    for (const field of ["place", "site"]) {
      const name = values[field];
      if (typeof name !== "string") continue;
      const vehicle = vehicles.get(name);
      const [home, ...others] = homes.get(nameKey(name)) ?? [];
      if (vehicle !== undefined) values[field] = field === "place" && devices.has(nameKey(vehicle)) ? vehicle : name;
      else if (home !== undefined && others.length === 0 && !devices.has(nameKey(name))) values[field] = home;
    }
  }
}
