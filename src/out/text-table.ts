import { clipText, LONGEST_NAME, plainText, textWidth, wordsOf, wrapText } from "./text-width.ts";

/** A column of a text table. */
export interface TextColumn<Row> {
  head: string;
  /** Text of a row's cell. */
  cell: (row: Row) => string;
  align?: "left" | "right";
  /** May be clipped down to this many columns where the table is too wide; where absent, only what is no name any more. */
  clipTo?: number;
  /** Left out first (the highest number first) where clipping is not enough; never where absent. */
  dropRank?: number;
}

const GAP = "  ";

/**
 * A table in plain text: a head, a rule of hyphens and a line a row, at most `width` columns wide where its
 * columns allow. Too wide a table first sets its heads in several lines, then clips long cells, then leaves out
 * columns and says which.
 */
export function textTable<Row>(columns: readonly TextColumn<Row>[], rows: readonly Row[], width: number): string {
  let kept = columns.map((column) => sized(column, rows, [column.head]));
  if (tableWidth(kept) > width) kept = columns.map((column) => sized(column, rows, wordsOf(column.head)));
  const dropped: string[] = [];
  for (;;) {
    const clipped = clipWidths(kept, width);
    const next = kept.filter(({ column }) => column.dropRank !== undefined).sort(byDropRank)[0];
    if (tableWidth(clipped) <= width || next === undefined) {
      kept = clipped;
      break;
    }
    dropped.push(next.column.head);
    kept = kept.filter((each) => each !== next);
  }
  const heads = kept.map((each) => wrapText(each.column.head, each.width).split("\n"));
  const headLines = Math.max(1, ...heads.map(({ length }) => length));
  const lines = [
    ...Array.from({ length: headLines }, (_, line) =>
      // a head of fewer lines stands right above the rule
      joinCells(kept.map((each, n) => padCell(heads[n]![line - headLines + heads[n]!.length] ?? "", each))),
    ),
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

/** A column as wide as its cells and these parts of its head, which no line of the head may break. */
function sized<Row>(column: TextColumn<Row>, rows: readonly Row[], headParts: readonly string[]): SizedColumn<Row> {
  const cells = rows.map((row) => clipText(plainText(column.cell(row)), LONGEST_NAME));
  return { column, cells, width: [...cells, ...headParts].reduce((most, text) => Math.max(most, textWidth(text)), 0) };
}

function tableWidth(columns: readonly SizedColumn<never>[]): number {
  return columns.reduce((sum, { width }) => sum + width, GAP.length * (columns.length - 1));
}

/** Takes the surplus from the widest column that may be clipped, one step at a time. */
function clipWidths<Row>(columns: readonly SizedColumn<Row>[], width: number): SizedColumn<Row>[] {
  const clipped = columns.map((each) => ({ ...each }));
  for (let surplus = tableWidth(clipped) - width; surplus > 0; surplus--) {
    const clippable = clipped.filter((each) => each.width > (each.column.clipTo ?? Number.POSITIVE_INFINITY));
    const widest = clippable.sort((a, b) => b.width - a.width)[0];
    if (widest === undefined) break;
    widest.width--;
  }
  return clipped;
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
