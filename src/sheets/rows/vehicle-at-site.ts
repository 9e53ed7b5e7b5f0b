import { nameKey } from "../../fleet/name-key.ts";

/** A vehicle at its site as one name: "North, Ambulance 7"; either alone where the other is blank or says it already. */
export function vehicleAtSite(site: string, vehicle: string): string {
  if (vehicle === "" || site === "") return vehicle + site;
  return nameKey(vehicle).includes(nameKey(site)) ? vehicle : `${site}, ${vehicle}`;
}
