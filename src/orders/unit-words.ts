import { counted } from "../fleet/count-text.ts";
import type { ItemKind } from "../fleet/rows.ts";

/** Units of an item, as a reader counts them. */
export function unitWords(units: number, kind: ItemKind | null): string {
  return counted(units, kind === "pack" ? "pack" : "unit");
}
