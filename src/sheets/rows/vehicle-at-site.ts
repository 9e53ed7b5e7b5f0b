import { nameKey } from "../../fleet/name-key.ts";

/** A vehicle at its site as one name: "North, Ambulance 7"; either alone where the other is blank or its words say it already. */
export function vehicleAtSite(site: string, vehicle: string): string {
  if (vehicle === "" || site === "") return vehicle + site;
  return words(vehicle).includes(words(site)) ? vehicle : `${site}, ${vehicle}`;
}

function words(name: string): string {
  return ` ${nameKey(name)
    .replace(/[^\p{L}\d]+/gu, " ")
    .trim()} `;
}
