/** A file, with the tab of it that is meant where it is a workbook. */
export function fileAndTab(file: string, tab: string | null): string {
  return tab === null ? file : `${file} · ${tab}`;
}

/** A device or place, with the site where it stands; null where neither is known. */
export function placeAndSite(place: string | null, site: string | null): string | null {
  return [place, site].filter((part) => part !== null).join(", ") || null;
}
