import { make } from "./dom.ts";

// So many rows are made and laid out within a frame or two.
export const PORTION = 50;

/**
 * A table's rows in portions, each in a body of its own: where there are many, those out of sight wait to be laid out.
 *
 * @param shown      how many stand there before all are asked for
 * @param linesARow  lines of the table that a row takes
 */
export function tableBodies<Row>(
  whole: HTMLTableElement,
  rows: readonly Row[],
  shown: number,
  linesARow: number,
  linesOf: (row: Row) => HTMLTableRowElement[],
) {
  const bodies = [newBody()];
  /** How many rows stand in their order; what stands beyond them is taken away, or waits to be replaced. */
  let placed = 0;
  fill();

  /** Places the rows that are lacking, a portion a task, or all `atOnce` to be printed; takes away those beyond `count`. */
  function fill(count = shown, atOnce = false): void {
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
    bodies[at] ??= newBody();
    const body = bodies[at];
    const made = rows.slice(placed, to).flatMap(linesOf);
    if (placed % PORTION === 0) body.replaceChildren(...made);
    else body.append(...made);
    body.style.setProperty("--rows", String(to - at * PORTION));
    placed = Math.max(placed, to);
  }

  function newBody(): HTMLTableSectionElement {
    const body = make("tbody", { role: whole.getAttribute("role") && "rowgroup" });
    whole.append(body);
    return body;
  }

  function takeFrom(count: number): void {
    placed = count;
    for (const body of bodies.splice(Math.max(1, Math.ceil(count / PORTION)))) body.remove();
    const last = bodies.at(-1)!;
    for (const line of [...last.rows].slice((count - (bodies.length - 1) * PORTION) * linesARow)) line.remove();
  }

  return {
    shown: () => shown,
    fill,
    /** Shows every row; gives the first line that is new. */
    showAll(): HTMLTableRowElement | undefined {
      const next = shown;
      shown = rows.length;
      fill();
      return bodies[Math.floor(next / PORTION)]?.rows[linesARow * (next % PORTION)];
    },
    /** Has the rows stand in another order. Of many, putting them in order and showing them are tasks of their own. */
    reorder(inOrder: readonly Row[]): void {
      const show = () => {
        rows = inOrder;
        placed = 0;
        fill();
      };
      if (placed > PORTION) setTimeout(show);
      else show();
    },
  };
}
