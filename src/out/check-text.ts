import { countText } from "../fleet/count-text.ts";
import { placeText } from "../fleet/place-text.ts";
import type { Reading, ReadTable } from "../sheets/reading.ts";
import { findingLines, setAsideLines } from "./finding-lines.ts";
import { findingRows, inputRows, tablesInOrder } from "./plan-head.ts";
import { sheetsRead } from "./sheets-read.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { type TextColumn, textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/**
 * How each sheet and column was read, and everything that was found.
 *
 * @param asOf  ISO date, shown because dates after it are not used
 */
export function checkText(reading: Reading, asOf: string, setting: TextSetting): string {
  const { width } = setting;
  const tables = tablesInOrder(reading.inputs);
  return joinLines([
    titleLine(`Sheets as of ${asOf}`, setting),
    "",
    wrapText(sheetsRead({ inputs: inputRows(reading.inputs), findings: findingRows(reading.findings) }), width),
    ...(tables.length > 0 ? ["", tablesTable(tables, width)] : []),
    ...tables.flatMap((table) => section(`Columns of ${tableName(table)}`, [columnsTable(table, width)], setting)),
    ...section("Rows set aside", setAsideLines(reading, width), setting),
    ...section("Findings", findingLines(reading, width), setting),
    ...section(
      "Refused",
      bullets(
        reading.refused.map(
          ({ file, code, message }) => `${placeText({ file, sheet: null, line: null })}: ${message} [${code}]`,
        ),
        setting,
      ),
      setting,
    ),
  ]);
}

function tablesTable(tables: readonly ReadTable[], width: number): string {
  const tabs: TextColumn<ReadTable>[] = [
    { head: "file", cell: ({ file }) => file, clipTo: 12 },
    { head: "tab", cell: ({ sheet, table }) => `${sheet ?? ""}${tableNumber(table)}`, clipTo: 9 },
  ];
  return textTable<ReadTable>(
    [
      ...(tables.some(({ sheet }) => sheet !== null) ? tabs : [{ head: "file", cell: tableName, clipTo: 16 }]),
      { head: "read as", cell: (table) => table.kinds.join(", ") || "-", clipTo: 12 },
      { head: "header", align: "right", cell: (table) => table.headerLines.join(", "), dropRank: 1 },
      { head: "rows", align: "right", cell: (table) => countText(table.rows) },
      { head: "used", align: "right", cell: (table) => countText(table.used) },
      { head: "set aside", align: "right", cell: (table) => countText(table.setAside) },
    ],
    tables,
    width,
  );
}

/** The columns as a table, or in one sentence where each is read under the name that it has. */
function columnsTable(table: ReadTable, width: number): string {
  if (table.columns.every(({ header, field, dateOrder }) => header === field && dateOrder === null)) {
    return wrapText(`Each read under its own name: ${table.columns.map(({ field }) => field).join(", ")}.`, width);
  }
  return textTable<ReadTable["columns"][number]>(
    [
      { head: "column", align: "right", cell: (column) => String(column.column) },
      { head: "header", cell: (column) => column.header ?? "-", clipTo: 12 },
      {
        head: "read as",
        cell: ({ kind, field }) => (field === null ? "not read" : `${kind ?? ""}.${field}`),
      },
      { head: "by", cell: (column) => column.by ?? "-" },
      { head: "dates", cell: (column) => column.dateOrder ?? "", dropRank: 1 },
    ],
    table.columns,
    width,
  );
}

function tableName({ file, sheet, table }: ReadTable): string {
  return `${placeText({ file, sheet, line: null })}${tableNumber(table)}`;
}

/** Which of several tables in one place it is; nothing for the first. */
function tableNumber(table: number): string {
  return table > 1 ? `, table ${table}` : "";
}
