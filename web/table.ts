import { make } from "./dom.ts";
import { compareNames, numberWords } from "./format.ts";
import { say } from "./strings.ts";

export interface Column<Row> {
  title: string;
  /** What the column sorts by; also what it shows, without `show`. */
  value: (row: Row) => string | number | null;
  show?: (row: Row) => string | Node | null;
  /** Figures stand to the right, aligned on the decimal. */
  figures?: boolean;
  /** Takes the width that is left over. */
  wide?: boolean;
}

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

// So few rows are kept on one printed page.
const SHORT = 12;
// So many rows are made and laid out well within a tenth of a second.
const PORTION = 100;

// So many rows of a long table tell how wide its columns are.
const STAND_INS = 40;

type Direction = "ascending" | "descending";

/** A table that sorts by its headers and scrolls sideways by itself where the page is narrow. */
export function table<Row>(spec: TableSpec<Row>): HTMLElement {
  let rows = [...spec.rows];
  let shown = Math.min(spec.first ?? 25, rows.length);
  const body = make("tbody");
  const heads = spec.columns.map((column) => head(column, () => sortBy(column)));
  const more = make("button", { type: "button", class: "more", click: () => showAll() }, "");

  /** How many rows stand in their order; what stands beyond them is taken away, or waits to be replaced. */
  let placed = 0;
  let held = false;
  const linesARow = spec.below ? 2 : 1;

  /** Places the rows that are lacking, a portion a task, or all `atOnce` to be printed; takes away those beyond `count`. */
  function fill(count = shown, atOnce = false): void {
    more.hidden = shown >= rows.length;
    more.textContent = say.table.all(numberWords(rows.length));
    if (!atOnce && count - placed > PORTION) holdWidths(true);
    if (placed < count) place(atOnce ? count : Math.min(count, placed + PORTION));
    if (placed < count) goOnFrom(placed);
    else {
      takeFrom(count);
      // Very many rows stay held: to let go of them would lay out all at once.
      if (atOnce || placed <= PORTION) holdWidths(false);
    }
  }

  /**
   * Holds the columns as wide as their rows will want them, else every portion lays out all rows anew: rows from all
   * over the table, and those with most to say, stand in for the others while widths are read.
   */
  function holdWidths(hold: boolean): void {
    if (hold === held) return;
    held = hold;
    const others = make("tbody", {}, hold ? standIns(rows, spec.columns).flatMap(rowOf) : []);
    if (hold) whole.append(others);
    const widths = heads.map((head) => (hold ? getComputedStyle(head).width : ""));
    others.remove();
    for (const [at, head] of heads.entries()) head.style.width = widths[at]!;
    whole.classList.toggle("held", hold);
  }

  function goOnFrom(before: number): void {
    setTimeout(() => {
      if (placed === before) fill();
    });
  }

  /** Puts rows in the place of those that stood there in another order, so that the page stays as long as it is. */
  function place(to: number): void {
    const lines = [...body.children];
    const next = lines[to * linesARow];
    for (const line of lines.slice(placed * linesARow, to * linesARow)) line.remove();
    const made = rows.slice(placed, to).flatMap(rowOf);
    if (next) next.before(...made);
    else body.append(...made);
    placed = to;
  }

  function takeFrom(count: number): void {
    placed = count;
    for (const line of [...body.children].slice(count * linesARow)) line.remove();
  }

  function rowOf(row: Row): HTMLTableRowElement[] {
    const cells = spec.columns.map((column) => cell(column, row));
    if (!spec.below) return [make("tr", {}, cells)];
    const below = make("div", { class: "under" }, spec.below(row));
    return [
      make("tr", { class: "explained" }, cells),
      make("tr", {}, make("td", { class: "below", colspan: spec.columns.length }, below)),
    ];
  }

  function showAll(): void {
    const next = shown;
    shown = rows.length;
    fill();
    // The button is gone: keep the keyboard where the new rows begin.
    const row = body.rows[linesARow * next];
    row?.setAttribute("tabindex", "-1");
    row?.focus({ preventScroll: true });
  }

  function sortBy(column: Column<Row>): void {
    const at = spec.columns.indexOf(column);
    const before = heads[at]?.getAttribute("aria-sort");
    const direction: Direction = before === "ascending" ? "descending" : "ascending";
    for (const other of heads) other.removeAttribute("aria-sort");
    heads[at]?.setAttribute("aria-sort", direction);
    const inOrder = sorted(spec.rows, column, direction);
    const show = () => {
      rows = inOrder;
      placed = 0;
      fill();
    };
    // of many rows, putting them in order and showing them are tasks of their own
    if (placed > PORTION) setTimeout(show);
    else show();
  }

  function head(column: Column<Row>, sort: () => void): HTMLTableCellElement {
    const sortable = spec.sortable !== false && spec.rows.length > 1;
    return make(
      "th",
      { scope: "col", class: cellClass(column) },
      sortable && make("button", { type: "button", click: sort }, column.title),
      // Chromium leaves buttons out of a head that it repeats on the next page.
      make("span", { class: sortable ? "printed" : null }, column.title),
    );
  }

  const whole = make("table", {}, make("caption", {}, spec.caption), make("thead", {}, make("tr", {}, heads)), body);
  fill();
  const note = make("p", { class: "print-note" });
  const printing = (on: boolean) => () => {
    const alone = holder.closest(".alone") !== null;
    const count = alone ? rows.length : Math.min(rows.length, Math.max(shown, spec.printed ?? 0));
    fill(on ? count : shown, on);
    note.textContent =
      count < rows.length ? say.table.printed(numberWords(count), numberWords(rows.length), spec.file ?? null) : "";
  };
  const scroll = make(
    "div",
    { class: "scroll", role: "group", tabindex: 0, "aria-label": say.table.scroll(spec.caption) },
    whole,
  );
  markWhereItGoesOn(scroll, whole);
  const holder = make("div", { class: rows.length <= SHORT ? "table short" : "table" }, scroll, more, note);
  whileInPage(holder, "resize", () => holdWidths(false));
  whileInPage(holder, "beforeprint", printing(true));
  whileInPage(holder, "afterprint", printing(false));
  return holder;
}

/** Marks a table of which more lies beyond the right edge. */
function markWhereItGoesOn(scroll: HTMLElement, whole: HTMLElement): void {
  const mark = () =>
    scroll.classList.toggle("goes-on", scroll.scrollWidth - scroll.clientWidth - scroll.scrollLeft > 1);
  scroll.addEventListener("scroll", mark, { passive: true });
  const sizes = new ResizeObserver(mark);
  sizes.observe(scroll);
  sizes.observe(whole);
}

/** Listens to the window for as long as an element stands in the page. */
function whileInPage(element: Element, event: "resize" | "beforeprint" | "afterprint", run: () => void): void {
  const heard = () => (element.isConnected ? run() : window.removeEventListener(event, heard));
  window.addEventListener(event, heard);
}

/** Rows by which a long table's columns can be measured: every so manieth, and for each column that with most to say. */
function standIns<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): Row[] {
  const every = Math.ceil(rows.length / STAND_INS);
  const length = (row: Row, column: Column<Row>) => String(column.value(row)).length;
  const longest = columns.map((column) =>
    rows.reduce((most, row) => (length(row, column) > length(most, column) ? row : most)),
  );
  return [...rows.filter((_, at) => at % every === 0), ...longest];
}

function cellClass<Row>(column: Column<Row>): string | null {
  if (column.figures) return "figures";
  return column.wide ? "wide" : null;
}

function cell<Row>(column: Column<Row>, row: Row): HTMLTableCellElement {
  const content = column.show ? column.show(row) : column.value(row);
  return make("td", { class: cellClass(column) }, content instanceof Node ? content : String(content ?? say.none));
}

/** Sorts a copy; what is unknown stands last in both directions. */
function sorted<Row>(rows: readonly Row[], column: Column<Row>, direction: Direction): Row[] {
  const sign = direction === "ascending" ? 1 : -1;
  const keyed = rows.map((row) => ({ row, key: column.value(row) }));
  keyed.sort(({ key: x }, { key: y }) => {
    if (x === null || y === null) return x === y ? 0 : x === null ? 1 : -1;
    if (typeof x === "number" && typeof y === "number") return sign * (x - y);
    return sign * compareNames(String(x), String(y));
  });
  return keyed.map(({ row }) => row);
}
