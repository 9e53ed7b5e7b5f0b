import { cellAt, type GridRow } from "../grid.ts";
import { cellText, meansEmpty } from "../values/cell-text.ts";
import { type CellPart, cellPart } from "../values/lot-and-date.ts";

/** Rows looked at: enough to tell a column's nature, few enough to cost nothing. */
const SAMPLE = 120;

/** What stands in some of a column's cells. */
export interface ColumnSample {
  /** Texts of the filled ones. */
  texts: string[];
  /** Rows looked at, each of them so many rows behind the one before. */
  looked: number;
  step: number;
}

/** The cells of one column (0-based), or a part of each, in rows spread evenly over all. */
export function sampleColumn(rows: readonly GridRow[], column: number, part: CellPart | null): ColumnSample {
  const step = Math.max(1, Math.floor(rows.length / SAMPLE));
  const texts: string[] = [];
  let looked = 0;
  for (let i = 0; i < rows.length; i += step, looked++) {
    const row = rows[i];
    const cell = (row && cellAt(row, column)) ?? null;
    const text = cellText(part === null ? cell : cellPart(cell, part));
    if (!meansEmpty(text)) texts.push(text);
  }
  return { texts, looked, step };
}
