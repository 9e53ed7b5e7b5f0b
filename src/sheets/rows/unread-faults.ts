import type { SheetKind } from "../../fleet/columns.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell, GridRow } from "../grid.ts";
import { columnsOf, type Table } from "../tables/table.ts";
import { cellText, MAX_TYPED_CHARACTERS } from "../values/cell-text.ts";
import { readYesNo } from "../values/choice-words.ts";
import { asksWhetherReady, saysNotReady, speaksOfFault } from "../values/fault-words.ts";
import { standingOf } from "../values/status-words.ts";
import { parseHeader, tellsStatus } from "../words/parse-header.ts";
import { columnName } from "./column-name.ts";
import type { Entry } from "./entry.ts";

/** Sheets that list what the fleet relies on; a log's remarks tell of what was. */
const OF_THINGS: ReadonlySet<SheetKind> = new Set(["devices", "packs", "dated_stock"]);
/** A remark is longer than a cell of a typed column. */
const MAX_REMARK_CHARACTERS = 4 * MAX_TYPED_CHARACTERS;

const SAYS = { "fault-unread": "speaks of a fault", "gone-unread": "says that it is gone" } as const;
type Said = keyof typeof SAYS;

/**
 * Findings for remarks that speak of a fault, or of a pack that is gone, in columns that are not read, and of a fault in
 * the status of a device, of things that have not left the fleet: the plan would count on them as on any other.
 *
 * @param unread  columns from which nothing is read
 */
export function noteUnreadFaults(table: Table, unread: readonly number[], entries: readonly Entry[], log: FindingLog) {
  const { file, sheet } = table.grid;
  for (const column of [...unread, ...statusOfDevices(table)]) {
    const isRead = !unread.includes(column);
    const said = saidIn(table, column, isRead);
    if (said.size === 0) continue;
    const left = isRead ? rowsOfRetired(entries) : null;
    for (const { row, values, sheet: of } of entries) {
      if (!OF_THINGS.has(of.kind) || (values.retired ?? null) !== null || left?.has(row)) continue;
      const { cells, line } = table.rows[row] as GridRow;
      const cell = cells[column] ?? null;
      const code = said.get(cell);
      if (code === undefined || (code === "gone-unread" && of.kind !== "packs" && readYesNo(String(cell)) !== true))
        continue;
      const value = cellText(cell);
      log.add(code, { file, sheet, line, column: column + 1, value }, () => ({
        message: `"${shortened(value)}" in column ${columnName(table, column)} ${SAYS[code]}, and the ${isRead ? "plan does not heed it" : "column is not read"}.`,
      }));
    }
  }
}

/** Rows of devices that have left: what is in one is needed no more. */
function rowsOfRetired(entries: readonly Entry[]): Set<number> {
  return new Set(
    entries.flatMap(({ row, sheet, values }) => (sheet.kind === "devices" && values.retired !== null ? row : [])),
  );
}

/** The columns that say how devices stand: a device that is gone is retired, any other is planned for. */
function statusOfDevices({ outputs, header }: Table): number[] {
  return outputs.flatMap((output) =>
    output.sheet.kind === "devices"
      ? columnsOf(output, "retired").filter((column) => tellsStatus(parseHeader(header[column] ?? "")))
      : [],
  );
}

/** What the different cells of a column say, of those that say anything; a status also says that a device may not be used. */
function saidIn({ header, rows }: Table, column: number, isStatus: boolean): Map<Cell, Said> {
  const name = header[column] ?? "";
  const ready = asksWhetherReady(name) || parseHeader(name).says === "result";
  const said = new Map<Cell, Said | null>();
  for (const { cells } of rows) {
    const cell = cells[column];
    if (typeof cell !== "string" || cell === "" || cell.length > MAX_REMARK_CHARACTERS || said.has(cell)) continue;
    // yes says what its header asks: "Replaced?"
    const text = readYesNo(cell) === true ? name.replace(/\W+$/, "") : cell;
    const standing = standingOf(text);
    const fault = speaksOfFault(text) || (ready && saysNotReady(cell)) || (isStatus && standing === "held");
    said.set(cell, fault ? "fault-unread" : standing === "gone" ? "gone-unread" : null);
  }
  return new Map([...said].flatMap(([cell, code]) => (code === null ? [] : [[cell, code]])));
}
