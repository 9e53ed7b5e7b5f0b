import type { GridRow } from "../grid.ts";

/** A list that a sheet holds in another layout: a row of names and one for each record, with lines of their own. */
export interface ListInside {
  rows: GridRow[];
  /** What the list goes by beside its tab's name. */
  name: string;
  /** Where its lines stand in the sheet, as a sentence. */
  where: string;
}
