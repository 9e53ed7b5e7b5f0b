import type { Reading } from "../src/index.ts";
import { nameKey } from "./name-key.ts";

/** A file, with the tab of it that is meant where it is a workbook. */
export function fileAndTab(file: string, tab: string | null): string {
  return tab === null ? file : `${file} · ${tab}`;
}

/** A device or place, with the site where it stands; null where neither is known. */
export function placeAndSite(place: string | null, site: string | null): string | null {
  return [place, site].filter((part) => part !== null).join(", ") || null;
}

/** The site of a place; null where the sheets do not say. */
export type SiteOf = (place: string | null) => string | null;

/** Where the devices of the sheets stand. */
export function sitesIn({ fleet }: Reading): SiteOf {
  const sites = new Map(fleet.devices.map(({ device, site }) => [nameKey(device), site]));
  return (place) => (place === null ? null : (sites.get(nameKey(place)) ?? null));
}
