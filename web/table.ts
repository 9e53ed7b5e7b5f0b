import { button, make } from "./dom.ts";
import { numberWords } from "./format.ts";
import { say } from "./strings.ts";
import { laidOutAsMany } from "./table-layout.ts";
import { type Direction, sorted } from "./table-order.ts";

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
// So many rows are made and laid out within a frame or two.
const PORTION = 50;

/** A table that sorts by its headers and scrolls sideways by itself where the page is narrow. */
export function table<Row>(spec: TableSpec<Row>): HTMLElement {
  let rows = [...spec.rows];
  let shown = Math.min(spec.first ?? 25, rows.length);
  /** Where there are many rows the browser may not see a table in how they are laid out, and is told. */
  const role = (name: string) => (rows.length > PORTION ? name : null);
  const heads = spec.columns.map((column) => head(column, () => sortBy(column)));
  const thead = make("thead", { role: role("rowgroup") }, make("tr", { role: role("row") }, heads));
  const more = button("", showAll, { class: "more" });

  /** Rows in portions, each in a body of its own: where there are many, those out of sight wait to be laid out. */
  const bodies = [newBody()];
  /** How many rows stand in their order; what stands beyond them is taken away, or waits to be replaced. */
  let placed = 0;
  const linesARow = spec.below ? 2 : 1;

  /** Places the rows that are lacking, a portion a task, or all `atOnce` to be printed; takes away those beyond `count`. */
  function fill(count = shown, atOnce = false): void {
    more.hidden = shown >= rows.length;
    more.textContent = say.table.all(numberWords(rows.length));
    if (placed < count) place(count);
    while (atOnce && placed < count) place(count);
    if (placed < count) goOnFrom(placed);
    else takeFrom(count);
  }

  function goOnFrom(before: number): void {
    setTimeout(() => {
      if (placed === before) fill();
    });
  }

  /** Fills the next body, in the place of rows that stood there in another order, so that the page stays as long as it is. */
  function place(count: number): void {
    const at = Math.floor(placed / PORTION);
    const to = Math.min(count, (at + 1) * PORTION);
    const body = bodies[at] ?? newBody();
    const made = rows.slice(placed, to).flatMap(rowOf);
    if (placed % PORTION === 0) body.replaceChildren(...made);
    else body.append(...made);
    body.style.setProperty("--rows", String(to - at * PORTION));
    if (!bodies[at]) whole.append(body);
    bodies[at] = body;
    placed = Math.max(placed, to);
  }

  function newBody(): HTMLTableSectionElement {
    return make("tbody", { role: role("rowgroup") });
  }

  function takeFrom(count: number): void {
    placed = count;
    for (const body of bodies.splice(Math.max(1, Math.ceil(count / PORTION)))) body.remove();
    const last = bodies.at(-1)!;
    for (const line of [...last.rows].slice((count - (bodies.length - 1) * PORTION) * linesARow)) line.remove();
  }

  function rowOf(row: Row): HTMLTableRowElement[] {
    const cells = spec.columns.map((column) => cell(column, row, role("cell")));
    if (!spec.below) return [make("tr", { role: role("row") }, cells)];
    const below = make("div", { class: "under" }, spec.below(row));
    return [
      make("tr", { role: role("row"), class: "explained" }, cells),
      make(
        "tr",
        { role: role("row") },
        make("td", { role: role("cell"), class: "below", colspan: spec.columns.length }, below),
      ),
    ];
  }

  function showAll(): void {
    const next = shown;
    const show = () => {
      shown = rows.length;
      fill();
      // The button is gone: keep the keyboard where the new rows begin.
      const row = bodies[Math.floor(next / PORTION)]?.rows[linesARow * (next % PORTION)];
      row?.setAttribute("tabindex", "-1");
      row?.focus({ preventScroll: true });
    };
    if (rows.length > PORTION) {
      layOutAsMany();
      setTimeout(show);
    } else show();
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
      { scope: "col", role: role("columnheader"), class: cellClass(column) },
      sortable && button(column.title, sort),
      // Chromium leaves buttons out of a head that it repeats on the next page.
      make("span", { class: sortable ? "printed" : null }, column.title),
    );
  }

  const whole = make("table", { role: role("table") }, make("caption", {}, spec.caption), thead, ...bodies);
  const layOutAsMany = laidOutAsMany(whole, spec, rowOf);
  fill();
  const note = make("p", { class: "print-note" });
  const printing = (on: boolean) => () => {
    const least = Math.max(shown, spec.printed ?? 0);
    // a few rows more are worth their paper
    const entire = holder.closest(".alone") !== null || rows.length <= 1.5 * least;
    const count = entire ? rows.length : least;
    fill(on ? count : shown, on);
    note.textContent =
      count < rows.length ? say.table.printed(numberWords(count), numberWords(rows.length), spec.file ?? null) : "";
  };
  const scroll = make("div", { class: "scroll", role: "group" }, whole);
  markWhereItGoesOn(scroll, whole, spec.caption);
  const holder = make("div", { class: rows.length <= SHORT ? "table short" : "table" }, scroll, more, note);
  whileInPage(holder, "resize", () => layOutAsMany(true));
  whileInPage(holder, "beforeprint", printing(true));
  whileInPage(holder, "afterprint", printing(false));
  return holder;
}

/** Marks a table of which more lies beyond the right edge; only one that scrolls is a stop for the keyboard. */
function markWhereItGoesOn(scroll: HTMLElement, whole: HTMLTableElement, caption: string): void {
  const mark = () => {
    const beyond = scroll.scrollWidth - scroll.clientWidth;
    scroll.classList.toggle("goes-on", beyond - scroll.scrollLeft > 1);
    scroll.tabIndex = beyond > 1 ? 0 : -1;
    scroll.ariaLabel = beyond > 1 ? say.table.scroll(caption) : caption;
    // how much of the box the head covers, and how far down it may go
    const head = whole.tHead!.offsetHeight;
    scroll.style.setProperty("--head", `${head}px`);
    scroll.style.setProperty("--below-head", `${Math.max(0, whole.offsetHeight - head - 2)}px`);
  };
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

// A name longer than this runs over several lines, so as not to push out of sight what follows it.
const LONG = 30;

function cellClass<Row>(column: Column<Row>, text = ""): string | null {
  if (column.figures) return "figures";
  return column.wide || text.length > LONG ? "wide" : null;
}

function cell<Row>(column: Column<Row>, row: Row, role: string | null): HTMLTableCellElement {
  const content = column.show ? column.show(row) : column.value(row);
  if (content instanceof Node) return make("td", { role, class: cellClass(column) }, content);
  const text = String(content ?? say.none);
  return make("td", { role, class: cellClass(column, text) }, text);
}
