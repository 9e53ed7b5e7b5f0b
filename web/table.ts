import { button, make } from "./dom.ts";
import { numberWords } from "./format.ts";
import { say } from "./strings.ts";
import { PORTION, tableBodies } from "./table-bodies.ts";
import { headCell, linesOf } from "./table-cells.ts";
import { laidOutAsMany } from "./table-layout.ts";
import { type Order, sorted } from "./table-order.ts";
import type { TableSpec } from "./table-spec.ts";

// So few rows are kept on one printed page.
const SHORT = 12;

/**
 * A table that sorts by its headers and scrolls sideways by itself where the page is narrow.
 *
 * @param order  what it is sorted by, for a table that takes its place to go on with
 */
export function table<Row>(spec: TableSpec<Row>, order: Partial<Order> = {}): HTMLElement {
  const { rows, columns, below, printed = 0 } = spec;
  const many = rows.length > PORTION;
  /** Where there are many rows the browser may not see a table in how they are laid out, and is told. */
  const role = (name: string) => (many ? name : null);
  const sortable = spec.sortable !== false && rows.length > 1;
  const heads = columns.map((column, at) => headCell(column, sortable ? () => sortBy(at) : null, role));
  const whole = make(
    "table",
    { role: role("table") },
    make("caption", {}, spec.caption),
    make("thead", { role: role("rowgroup") }, make("tr", { role: role("row") }, heads)),
  );
  const lines = (row: Row) => linesOf(spec, row, role);
  const layOutAsMany = laidOutAsMany(whole, spec, lines);
  const bodies = tableBodies(whole, inOrder(), Math.min(spec.first ?? 25, rows.length), below ? 2 : 1, lines);
  const more = button(say.table.all(numberWords(rows.length)), showAll, { class: "more" });
  more.hidden = bodies.shown() >= rows.length;
  const note = make("p", { class: "print-note" });
  const scroll = make("div", { class: "scroll", role: "group" }, whole);
  markWhereItGoesOn(scroll, whole, spec.caption);
  const holder = make("div", { class: rows.length <= SHORT ? "table short" : "table" }, scroll, more, note);
  whileInPage(holder, "resize", () => layOutAsMany(true));
  whileInPage(holder, "beforeprint", () => {
    const count = countOnPaper();
    bodies.fill(count, true);
    note.textContent =
      count < rows.length ? say.table.printed(numberWords(count), numberWords(rows.length), spec.file ?? null) : "";
  });
  whileInPage(holder, "afterprint", () => bodies.fill());
  return holder;

  function showAll(): void {
    const show = () => {
      more.hidden = true;
      // The button is gone: keep the keyboard where the new rows begin.
      const row = bodies.showAll();
      row?.setAttribute("tabindex", "-1");
      row?.focus({ preventScroll: true });
    };
    if (many) {
      layOutAsMany();
      setTimeout(show);
    } else show();
  }

  function sortBy(at: number): void {
    order.direction = order.at === at && order.direction === "ascending" ? "descending" : "ascending";
    order.at = at;
    bodies.reorder(inOrder());
  }

  function inOrder(): readonly Row[] {
    const { at, direction } = order;
    if (at === undefined || direction === undefined) return rows;
    for (const head of heads) head.ariaSort = head === heads[at] ? direction : null;
    return sorted(rows, columns[at]!, direction);
  }

  function countOnPaper(): number {
    const least = Math.max(bodies.shown(), printed);
    // a few rows more are worth their paper
    return holder.closest(".alone") !== null || rows.length <= 1.5 * least ? rows.length : least;
  }
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
