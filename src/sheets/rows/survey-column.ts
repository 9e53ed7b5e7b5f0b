import type { ColumnSpec } from "../../fleet/columns.ts";
import { currencyCode, minorDigits } from "../../fleet/currency.ts";
import { type Cell, cellAt, type GridRow, textsInColumn } from "../grid.ts";
import { TextRow } from "../text/text-row.ts";
import { cellText, MAX_TYPED_CHARACTERS, meansEmpty } from "../values/cell-text.ts";
import { type DateOrder, readDateText, type WrittenDate } from "../values/date-text.ts";
import { type DecimalMark, decimalMarkProof } from "../values/number-text.ts";
import { type ColumnOrder, orderOfColumn } from "./date-order.ts";

/** What a look over a whole column told. */
export interface ColumnSurvey {
  order: ColumnOrder;
  mark: DecimalMark;
  /** True where the column's own numbers prove the mark. */
  proven: boolean;
  /** The first date whose order is open, with its line. */
  example: { text: string; line: number } | null;
  /** For a column that contradicts itself: a date that only day first allows, and one that only month first does. */
  proofs: { text: string; line: number }[];
  /** The first spreadsheet day number, and the lines of all. */
  serials: { text: string; lines: number[] } | null;
  /** The first year that stands alone, and the lines of all, where the day on which something began is read. */
  years: { text: string; lines: number[] } | null;
}

/** Looks over one column, or several of one order, before their cells are read one by one. */
export function surveyColumn(
  rows: readonly GridRow[],
  skip: ReadonlyMap<number, unknown>,
  columns: readonly number[],
  spec: ColumnSpec,
  options: { dateOrder: DateOrder | null; semicolons: boolean },
): ColumnSurvey {
  const nothing: ColumnSurvey = {
    order: { state: "not-needed", order: null },
    mark: options.semicolons ? "," : ".",
    proven: false,
    example: null,
    proofs: [],
    serials: null,
    years: null,
  };
  if (spec.type === "text" || spec.type === "choice" || spec.type === "yes-no" || spec.type === "list") return nothing;
  if (spec.type === "date") return surveyDates(rows, skip, columns, spec, options.dateOrder, nothing);
  const proven = surveyMark(rows, skip, columns[0] as number, spec);
  return { ...nothing, mark: proven ?? nothing.mark, proven: proven !== null };
}

function distinct(
  rows: readonly GridRow[],
  skip: ReadonlyMap<number, unknown>,
  columns: readonly number[],
): Map<Exclude<Cell, null>, number> {
  const lines = new Map<Exclude<Cell, null>, number>();
  for (const column of columns) noteDistinct(rows, skip, column, lines);
  return lines;
}

function noteDistinct(
  rows: readonly GridRow[],
  skip: ReadonlyMap<number, unknown>,
  column: number,
  lines: Map<Exclude<Cell, null>, number>,
): void {
  const met: boolean[] = [];
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] as GridRow;
    if (row instanceof TextRow) {
      // each text once, by its number
      const number = row.numberAt(column);
      if (number === -1 || met[number]) continue;
      if (skip.size === 0 || !skip.has(i)) met[number] = true;
    }
    const cell = cellAt(row, column);
    if (cell === undefined || cell === null || cell === "" || lines.has(cell) || (skip.size > 0 && skip.has(i)))
      continue;
    lines.set(cell, row.line);
  }
}

function surveyDates(
  rows: readonly GridRow[],
  skip: ReadonlyMap<number, unknown>,
  columns: readonly number[],
  { month }: ColumnSpec,
  choice: DateOrder | null,
  nothing: ColumnSurvey,
): ColumnSurvey {
  const dates: { written: Extract<WrittenDate, { kind: "ordered" }>; text: string; line: number }[] = [];
  let serials: ColumnSurvey["serials"] = null;
  let years: ColumnSurvey["years"] = null;
  for (const [cell, line] of distinct(rows, skip, columns)) {
    const text = cellText(cell);
    if (text.length > MAX_TYPED_CHARACTERS || meansEmpty(text)) continue;
    const written = readDateText(text);
    if (written?.kind === "ordered") dates.push({ written, text, line });
    else if (written?.kind === "span" && written.serial) {
      serials ??= { text, lines: [] };
      serials.lines.push(line);
    } else if (written?.kind === "bad" && written.year !== undefined && month === "first") {
      years ??= { text, lines: [] };
      years.lines.push(line);
    }
  }
  const order = orderOfColumn(
    dates.map(({ written }) => written),
    choice,
  );
  const open = dates.find(({ written: { days } }) => days.dmy !== days.mdy) ?? dates[0] ?? null;
  const proofs = [
    dates.find(({ written: { days } }) => days.dmy !== null && days.mdy === null),
    dates.find(({ written: { days } }) => days.mdy !== null && days.dmy === null),
  ].filter((proof) => proof !== undefined);
  return { ...nothing, order, serials, years, proofs, example: open };
}

/** The decimal mark that the column's own numbers prove; null where they prove none or both. */
function surveyMark(
  rows: readonly GridRow[],
  skip: ReadonlyMap<number, unknown>,
  column: number,
  spec: ColumnSpec,
): DecimalMark | null {
  const texts = textsInColumn(rows, column);
  if (texts !== null && !texts.some(holdsMark)) return null;
  const proofs = new Map<string, DecimalMark | null>();
  const proofOf = (cell: string) => {
    let proof = proofs.get(cell);
    if (proof === undefined) {
      proof = decimalMarkProof(cellText(cell));
      proofs.set(cell, proof);
    }
    return proof;
  };
  let commas = 0;
  let points = 0;
  let grouped: "," | "." | null = null;
  let inThousandths = spec.type === "money";
  for (let i = 0; i < rows.length; i++) {
    const cell = cellAt(rows[i] as GridRow, column);
    if (typeof cell !== "string" || cell.length > MAX_TYPED_CHARACTERS) continue;
    if (!holdsMark(cell) || (skip.size > 0 && skip.has(i))) continue;
    const proof = proofOf(cell);
    if (proof === ",") commas++;
    else if (proof === ".") points++;
    else {
      grouped = cell.includes(",") ? "," : ".";
      inThousandths &&= grouped === "." && rows[i]!.cells.some((text) => minorDigits(currencyCode(String(text))) === 3);
    }
  }
  if (commas > 0 && points === 0) return ",";
  if (points > 0 && commas === 0) return ".";
  // Whole counts hold no decimals, so 1.214 cycles can only be grouped thousands.
  if (spec.type === "whole" && grouped !== null) return grouped === "," ? "." : ",";
  // of a currency of thousandths 12.500 is twelve and a half; 12,500 may be either
  return inThousandths && commas === 0 ? grouped : null;
}

function holdsMark(text: string): boolean {
  return text.includes(",") || text.includes(".");
}
