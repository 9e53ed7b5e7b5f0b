import type { GridRow } from "../grid.ts";
import { isFormLine } from "./form-lines.ts";
import { looksLikeData } from "./looks-like-data.ts";

/** How many lines above a header may come again at the head of each printed page, and the shortest text of one. */
const PAGE_HEAD_LINES = 6;
const SHORTEST_TITLE = 8;

/** True for a line that starts as one above the header does: the head of a further page. */
export function repeatsTitle({ cells }: GridRow, rows: readonly GridRow[], { at }: { at: number }): boolean {
  const first = cells.find((cell) => cell !== null && cell !== "");
  if (typeof first !== "string" || first.length < SHORTEST_TITLE) return false;
  return rows
    .slice(Math.max(0, at - PAGE_HEAD_LINES), at)
    .some((above) => above.cells.includes(first) && !looksLikeData(above.cells));
}

/** Takes the title lines of the next table off the end of the one before. */
export function dropTitles(
  before: { body: GridRow[]; odd: ReadonlyMap<number, unknown> } | null,
  header: GridRow,
): void {
  let line = header.line;
  for (let last = before?.body.at(-1); before && last; last = before.body.at(-1)) {
    const filled = last.cells.filter((cell) => cell !== null && String(cell).trim() !== "");
    const title =
      ((filled.length === 1 && typeof filled[0] === "string") || isFormLine(last)) &&
      !before.odd.has(before.body.length - 1) &&
      line - last.line <= 2;
    if (!title) return;
    line = last.line;
    before.body.pop();
  }
}
