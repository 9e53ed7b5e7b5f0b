import { make } from "./dom.ts";

// So many rows of a long table tell how wide its columns are.
const STAND_INS = 40;

interface Valued<Row> {
  value: (row: Row) => string | number | null;
}

/**
 * Lays out a table of very many rows as lines of fixed columns, so that bodies out of sight need not be laid out: a
 * table by the browser's own rules asks every row for its widths at every change. On paper it stays one of these.
 *
 * @returns a function to call before many rows are placed, and `anew` where the room for the table has changed
 */
export function laidOutAsMany<Row>(
  whole: HTMLTableElement,
  { rows, columns }: { rows: readonly Row[]; columns: readonly Valued<Row>[] },
  rowOf: (row: Row) => HTMLTableRowElement[],
): (anew?: boolean) => void {
  return (anew = false) => {
    if (whole.classList.contains("many") !== anew) return;
    const { widths, rowHeight } = measured(whole, standIns(rows, columns).map(rowOf));
    whole.style.setProperty("--columns", widths.map((width) => `${width}px`).join(" "));
    whole.style.setProperty("--row-height", `${rowHeight}px`);
    whole.classList.add("many");
  };
}

/** How wide the columns want to be for the head and some rows, and how high these rows are in the mean, in pixels. */
function measured(whole: HTMLTableElement, rows: HTMLTableRowElement[][]): { widths: number[]; rowHeight: number } {
  const body = make("tbody", {}, rows.flat());
  const head = whole.tHead!.cloneNode(true) as HTMLTableSectionElement;
  const probe = make("table", { "aria-hidden": "true" }, head, body);
  whole.after(probe);
  const widths = [...head.rows[0]!.cells].map((cell) => cell.getBoundingClientRect().width);
  const rowHeight = body.getBoundingClientRect().height / rows.length;
  probe.remove();
  return { widths, rowHeight };
}

/** Rows by which the columns can be measured: every so manieth, and for each column that with most to say. */
function standIns<Row>(rows: readonly Row[], columns: readonly Valued<Row>[]): Row[] {
  const every = Math.ceil(rows.length / STAND_INS);
  const length = (row: Row, column: Valued<Row>) => String(column.value(row)).length;
  const longest = columns.map((column) =>
    rows.reduce((most, row) => (length(row, column) > length(most, column) ? row : most)),
  );
  return [...rows.filter((_, at) => at % every === 0), ...longest];
}
