import type { Sheet, SheetRow } from "../sheet.ts";
import type { RegisterCell } from "./date-styles.ts";

/** A column of the register: its words, the group that stands above it, and how it writes a cell. */
export interface RegisterColumn {
  header: string;
  group?: string;
  /** The canonical column behind it; null where nobody ever wrote anything the fleet needs. */
  from: string | null;
  write?: (text: string, row: SheetRow) => RegisterCell;
  hidden?: boolean;
}

/** What a tab of the register is, beside the rows of its sheet. */
export interface TabPlan {
  name: string;
  /** Lines above the header; null is a blank line. */
  title: readonly (string | null)[];
  columns: readonly RegisterColumn[];
  /** Rows after which a blank line and the header come again, as where a printed page ended; 0 is never. */
  headerAgainAfter?: number;
  /** Rows after which a blank line stands; 0 is never. */
  blankAfter?: number;
  /** Lines below the rows. */
  notes?: readonly string[];
}

/** A tab as rows of cells, with its merged headers (rows and columns from 0) and its hidden columns. */
export interface RegisterTab {
  name: string;
  rows: RegisterCell[][];
  merges: { startRow: number; startCol: number; endRow: number; endCol: number }[];
  hiddenColumns: number[];
}

/** Lays a sheet of the fleet out as someone else kept it. */
export function layOutTab(sheet: Sheet, tab: TabPlan): RegisterTab {
  const { columns, title, headerAgainAfter = 0, blankAfter = 0, notes = [] } = tab;
  const grouped = columns.some(({ group }) => group !== undefined);
  const header = columns.map(({ header }) => header);
  const top = title.length + (grouped ? 1 : 0);
  const rows: RegisterCell[][] = [
    ...title.map((line) => (line === null ? [] : [line])),
    ...(grouped ? [columns.map(({ group }, index) => (startsGroup(columns, index) ? (group ?? null) : null))] : []),
    header,
  ];
  sheet.rows.forEach((row, index) => {
    if (blankAfter > 0 && index > 0 && index % blankAfter === 0) rows.push([]);
    if (headerAgainAfter > 0 && index > 0 && index % headerAgainAfter === 0) rows.push([], header);
    rows.push(columns.map((column) => cellOf(row, column)));
  });
  return {
    name: tab.name,
    rows: [...rows, ...(notes.length > 0 ? [[], ...notes.map((note) => [note])] : [])],
    merges: [
      ...title.flatMap((line, row) =>
        line === null ? [] : [{ startRow: row, startCol: 0, endRow: row, endCol: columns.length - 1 }],
      ),
      ...(grouped ? groupMerges(columns, top - 1) : []),
    ],
    hiddenColumns: columns.flatMap(({ hidden }, index) => (hidden ? [index] : [])),
  };
}

function cellOf(row: SheetRow, { from, write }: RegisterColumn): RegisterCell {
  const value = from === null ? null : (row[from] ?? null);
  if (value === null || value === "") return null;
  return write ? write(String(value), row) : value;
}

const startsGroup = (columns: readonly RegisterColumn[], index: number) =>
  index === 0 || columns[index - 1]?.group !== columns[index]?.group;

function groupMerges(columns: readonly RegisterColumn[], row: number): RegisterTab["merges"] {
  return columns.flatMap(({ group }, startCol) => {
    if (group === undefined || !startsGroup(columns, startCol)) return [];
    let endCol = startCol;
    while (columns[endCol + 1]?.group === group) endCol += 1;
    return endCol > startCol ? [{ startRow: row, startCol, endRow: row, endCol }] : [];
  });
}
