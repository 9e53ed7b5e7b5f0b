import { clipText, plainText, textWidth, wrapText } from "./text-width.ts";

/** A column of a text table. */
export interface TextColumn<Row> {
  head: string;
  /** Text of a row's cell. */
  cell: (row: Row) => string;
  align?: "left" | "right";
  /** May be clipped down to this many columns where the table is too wide; never clipped where absent. */
  clipTo?: number;
  /** Left out first (the highest number first) where clipping is not enough; never where absent. */
  dropRank?: number;
}

const GAP = "  ";

/**
 * A table in plain text: a head, a rule of hyphens and a line a row, at most `width` columns wide where its
 * columns allow. Too wide a table first clips long cells, then leaves out columns and says which.
 */
export function textTable<Row>(columns: readonly TextColumn<Row>[], rows: readonly Row[], width: number): string {
  const shown = columns.map((column) => ({ column, cells: rows.map((row) => plainText(column.cell(row))) }));
  let kept = shown.map((each) => ({ ...each, width: naturalWidth(each.column.head, each.cells) }));
  const dropped: string[] = [];
  for (;;) {
    kept = clipWidths(kept, width);
    const next = kept.filter(({ column }) => column.dropRank !== undefined).sort(byDropRank)[0];
    if (tableWidth(kept) <= width || next === undefined) break;
    dropped.push(next.column.head);
    kept = kept
      .filter((each) => each !== next)
      .map((each) => ({ ...each, width: naturalWidth(each.column.head, each.cells) }));
  }
  const lines = [
    joinCells(kept.map((each) => padCell(each.column.head, each))),
    joinCells(kept.map((each) => "-".repeat(each.width))),
    ...rows.map((_, index) => joinCells(kept.map((each) => padCell(each.cells[index] ?? "", each)))),
  ];
  if (dropped.length > 0) lines.push(wrapText(`(not shown at this width: ${[...new Set(dropped)].join(", ")})`, width));
  return lines.join("\n");
}

interface SizedColumn<Row> {
  column: TextColumn<Row>;
  cells: string[];
  width: number;
}

function naturalWidth(head: string, cells: readonly string[]): number {
  return cells.reduce((most, cell) => Math.max(most, textWidth(cell)), textWidth(head));
}

function tableWidth(columns: readonly SizedColumn<never>[]): number {
  return columns.reduce((sum, { width }) => sum + width, GAP.length * (columns.length - 1));
}

/** Takes the surplus from the widest column that may be clipped, one step at a time. */
function clipWidths<Row>(columns: readonly SizedColumn<Row>[], width: number): SizedColumn<Row>[] {
  const sized = columns.map((each) => ({ ...each }));
  for (let surplus = tableWidth(sized) - width; surplus > 0; surplus--) {
    const clippable = sized.filter((each) => each.width > (each.column.clipTo ?? Number.POSITIVE_INFINITY));
    const widest = clippable.sort((a, b) => b.width - a.width)[0];
    if (widest === undefined) break;
    widest.width--;
  }
  return sized;
}

function byDropRank<Row>(a: SizedColumn<Row>, b: SizedColumn<Row>): number {
  return (b.column.dropRank ?? 0) - (a.column.dropRank ?? 0);
}

function padCell<Row>(text: string, { column, width }: SizedColumn<Row>): string {
  const clipped = clipText(text, width);
  const blanks = " ".repeat(width - textWidth(clipped));
  return column.align === "right" ? blanks + clipped : clipped + blanks;
}

function joinCells(cells: readonly string[]): string {
  return cells.join(GAP).trimEnd();
}
