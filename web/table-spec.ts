/** A column of a table: its head, and what it says of a row. */
export interface Column<Row> {
  title: string;
  /** What the column sorts by; also what it shows, without `show`. */
  value: (row: Row) => string | number | null;
  show?: (row: Row) => string | number | Node | null;
  /** Figures stand to the right, aligned on the decimal. */
  figures?: boolean;
  /** Takes the width that is left over. */
  wide?: boolean;
}

/** What a table shows, and how much of it. */
export interface TableSpec<Row> {
  caption: string;
  columns: Column<Row>[];
  rows: readonly Row[];
  /** Rows shown before the reader asks for all. */
  first?: number;
  sortable?: boolean;
  /** How many rows are printed, however many are shown on the screen. */
  printed?: number;
  /** The file that holds all rows, named below a printed table that is cut. */
  file?: string;
  /** What stands below a row, over the table's whole width. */
  below?: (row: Row) => string | Node;
}
