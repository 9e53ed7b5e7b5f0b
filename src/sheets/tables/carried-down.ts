import { nameKey } from "../../fleet/name-key.ts";
import { cellAt, type GridRow, isBlankCell, textsInColumn } from "../grid.ts";
import { cellText } from "../values/cell-text.ts";
import { columnsOf, type Output, type Table } from "./table.ts";

/** What may stand once for several lines: where things are, or the device that holds them. */
const STANDS_ONCE: ReadonlySet<string> = new Set(["place", "site", "device"]);

/**
 * The rows of a list whose first column names a place or device once and leaves it blank in the lines below that belong
 * to it, with the blanks filled. Null for other lists: where a name comes again, the first line has none, or fewer than
 * half of the names stand above a blank, as where blanks mean that a place is not known.
 */
export function carriedDown({
  header,
  outputs,
  rows,
  odd,
}: Pick<Table, "header" | "outputs" | "rows" | "odd">): { column: number; rows: GridRow[] } | null {
  const column = header.findIndex((name) => name !== null);
  if (!outputs.some((output) => isPlace(output, column))) return null;
  if (textsInColumn(rows, column)?.every((text) => !isBlankCell(text))) return null;
  const names = new Set<string>();
  const above = new Set<GridRow>();
  const sites = new Set(outputs.flatMap((output) => columnsOf(output, "site")));
  let last: GridRow | null = null;
  const filled: GridRow[] = [];
  for (const [at, row] of rows.entries()) {
    const cell = cellAt(row, column) ?? null;
    const key = nameKey(cellText(cell));
    const isData = !odd.has(at) && row.cells.filter((each) => !isBlankCell(each)).length > 1;
    if (isData && key === "") {
      if (last === null) return null;
      const { cells } = last;
      above.add(last);
      filled.push({
        line: row.line,
        cells: row.cells.map((each, of) =>
          (of === column || sites.has(of)) && isBlankCell(each) ? (cells[of] ?? null) : each,
        ),
      });
      continue;
    }
    // a sum names no place
    if (isData && !/^(total|summe)/.test(key)) {
      if (names.has(key)) return null;
      names.add(key);
      last = row;
    }
    filled.push(row);
  }
  return names.size > 1 && above.size * 2 >= names.size ? { column, rows: filled } : null;
}

function isPlace({ fields }: Output, column: number): boolean {
  return fields.some(({ spec, columns }) => columns[0] === column && STANDS_ONCE.has(spec.field));
}
