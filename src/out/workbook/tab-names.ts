/** Characters that the name of a workbook's tab may have. */
const LONGEST = 31;
/** What no tab's name may hold. */
const FORBIDDEN = /[\p{Cc}[\]:*?/\\]+/gu;

/**
 * Names under which a workbook takes tabs: no forbidden character, at most 31 long, no apostrophe at an end, and each
 * different from those before without regard to case.
 */
export function tabNames(names: readonly string[]): string[] {
  // the one name that spreadsheets keep for themselves
  const taken = new Set(["history"]);
  return names.map((name) => {
    const clean = trimmed(name.replace(FORBIDDEN, " ").replace(/\s+/g, " ")) || "Unnamed";
    for (let copy = 1; ; copy++) {
      const end = copy === 1 ? "" : ` (${copy})`;
      const tab = trimmed(shortened(clean, LONGEST - end.length)) + end;
      if (taken.has(tab.toLowerCase())) continue;
      taken.add(tab.toLowerCase());
      return tab;
    }
  });
}

function trimmed(text: string): string {
  return text.replace(/^[\s']+|[\s']+$/g, "");
}

/** The first UTF-16 units of a text, never half of a pair. */
function shortened(text: string, units: number): string {
  return text.slice(0, units).replace(/[\ud800-\udbff]$/, "");
}
