import { button, make } from "./dom.ts";
import { amountWords } from "./format.ts";
import { say } from "./strings.ts";
import type { Column, TableSpec } from "./table-spec.ts";
import { unbroken } from "./unbroken.ts";

/** Gives an element of a table its role, where the browser has to be told; else null. */
export type Role = (name: string) => string | null;

// A name longer than this runs over several lines, so as not to push out of sight what follows it.
const LONG = 30;

/** A column's head, which sorts by it where `sort` is given. */
export function headCell<Row>(column: Column<Row>, sort: (() => void) | null, role: Role): HTMLTableCellElement {
  return make(
    "th",
    { scope: "col", role: role("columnheader"), class: cellClass(column) },
    sort && button(column.title, sort),
    // Chromium leaves buttons out of a head that it repeats on the next page.
    make("span", { class: sort && "printed" }, column.title),
  );
}

/** A row as lines of a table: its cells, and what stands below them. */
export function linesOf<Row>({ columns, below }: TableSpec<Row>, row: Row, role: Role): HTMLTableRowElement[] {
  const cells = columns.map((column) => cell(column, row, role("cell")));
  if (!below) return [make("tr", { role: role("row") }, cells)];
  const told = below(row);
  const under = make("div", { class: "under" }, typeof told === "string" ? unbroken(told) : told);
  return [
    make("tr", { role: role("row"), class: "explained" }, cells),
    make(
      "tr",
      { role: role("row") },
      make("td", { role: role("cell"), class: "below", colspan: columns.length }, under),
    ),
  ];
}

function cell<Row>(column: Column<Row>, row: Row, role: string | null): HTMLTableCellElement {
  const content = column.show ? column.show(row) : column.value(row);
  if (content instanceof Node) return make("td", { role, class: cellClass(column) }, content);
  const text = typeof content === "number" ? amountWords(content) : content || say.none;
  return make("td", { role, class: cellClass(column, text) }, text);
}

function cellClass<Row>(column: Column<Row>, text = ""): string | null {
  if (column.figures) return "figures";
  return column.wide || text.length > LONG ? "wide" : null;
}
