import type { ItemKind } from "../fleet/rows.ts";

/** Units of an item, as a reader counts them. */
export function unitWords(units: number, kind: ItemKind | null): string {
  return kind === "pack" ? countWords(units, "pack", "packs") : countWords(units, "unit", "units");
}

/** A number with its noun. */
export function countWords(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}
