import { counted, countText } from "../fleet/count-text.ts";
import type { Finding, SetAsideRow } from "../fleet/finding.ts";
import { listed } from "../fleet/listed.ts";
import { placeText } from "../fleet/place-text.ts";
import type { Reading, ReadTable } from "../sheets/reading.ts";
import { findingRows, inputRows, tablesInOrder } from "./plan-head.ts";
import { setAsideInOrder } from "./set-aside-csv.ts";
import { sheetsRead } from "./sheets-read.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { type TextColumn, textTable } from "./text-table.ts";
import { plainText, wrapText } from "./text-width.ts";

/** Findings of one code in one file that are told in full; the others are counted. */
const TOLD_PER_CODE = 5;

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

/** Rows set aside, those of one reason and place together, with what to do, which the finding of the same line knows. */
export function setAsideLines({ setAside, findings }: Reading, width: number): string[] {
  const fixes = new Map(
    findings.flatMap((finding) =>
      [finding.line, ...finding.lines].map((line) => [ruledOut({ ...finding, line }, finding.code), finding.fix]),
    ),
  );
  const alike = new Map<string, { row: SetAsideRow; also: number[] }>();
  for (const row of setAsideInOrder(setAside)) {
    const key = [row.file, row.sheet, row.reason, row.message].join("\n");
    const before = alike.get(key);
    if (before) before.also.push(row.line);
    else alike.set(key, { row, also: [] });
  }
  return inGroups([...alike.values()], width, ({ row, also }) => ({
    code: row.reason,
    file: row.file,
    lines: [
      wrapText(`${placeText(row)}: ${row.message}${alsoOn(also)} [${row.reason}]`, width, "  "),
      ...fixLines(fixes.get(ruledOut(row, row.reason)) ?? fixOfAny(findings, row), width),
    ],
  }));
}

/** What to do about a whole table that is set aside, which stands with the finding of its header. */
function fixOfAny(findings: readonly Finding[], { file, sheet, reason }: SetAsideRow): string {
  const same = findings.filter(
    (finding) => finding.code === reason && finding.file === file && finding.sheet === sheet,
  );
  return same.length === 1 ? same[0]!.fix : "";
}

const IN_ORDER = ["error", "warning", "info"];

/** Findings that are not told with a set-aside row already: errors first, then warnings, then notes. */
export function findingLines({ setAside, findings }: Pick<Reading, "setAside" | "findings">, width: number): string[] {
  const told = new Set(
    setAside.flatMap((row) => [ruledOut(row, row.reason), ruledOut({ ...row, line: null }, row.message)]),
  );
  const others = unreadTogether(findingRows(findings))
    .filter(
      (finding) =>
        !told.has(ruledOut(finding, finding.code)) && !told.has(ruledOut({ ...finding, line: null }, finding.message)),
    )
    .sort((a, b) => IN_ORDER.indexOf(a.severity) - IN_ORDER.indexOf(b.severity));
  return inGroups(others, width, (finding) => ({
    code: finding.code,
    file: finding.file ?? "",
    lines: [wrapText(findingText(finding), width, "  "), ...fixLines(finding.fix, width)],
  }));
}

/** The findings with those of one header's unread columns as one. */
function unreadTogether(findings: readonly Finding[]): Finding[] {
  const unread = new Map<string, string[]>();
  return findings
    .filter((finding) => {
      if (finding.code !== "column-unread") return true;
      const key = ruledOut(finding, "");
      const names = unread.get(key);
      names?.push(`"${finding.value}"`);
      if (!names) unread.set(key, [`"${finding.value}"`]);
      return names === undefined;
    })
    .map((finding) => {
      const names = finding.code === "column-unread" ? (unread.get(ruledOut(finding, "")) ?? []) : [];
      if (names.length < 2) return finding;
      const message = `Nothing is read from the columns ${listed(names)}.`;
      return { ...finding, column: null, message };
    });
}

/** What a row and a finding share where they tell of the same thing. */
function ruledOut({ file, sheet, line }: Pick<Finding, "file" | "sheet" | "line">, code: string): string {
  return [file, sheet, line, code].join("\n");
}

/** The first few of each code and file in full, then how many more there are. */
function inGroups<Row>(
  rows: readonly Row[],
  width: number,
  tell: (row: Row) => { code: string; file: string; lines: string[] },
): string[] {
  const counts = new Map<string, { code: string; file: string; count: number }>();
  const lines: string[] = [];
  for (const row of rows) {
    const told = tell(row);
    const group = counts.get(`${told.code}\n${told.file}`) ?? { ...told, count: 0 };
    group.count++;
    counts.set(`${told.code}\n${told.file}`, group);
    if (group.count <= TOLD_PER_CODE) lines.push(...told.lines);
  }
  for (const { code, file, count } of counts.values()) {
    if (count <= TOLD_PER_CODE) continue;
    const where = file === "" ? "" : `${plainText(placeText({ file, sheet: null, line: null }))}: `;
    const more = counted(count - TOLD_PER_CODE, "more", "more");
    lines.push(wrapText(`${where}${more} like it [${code}]; --json gives all.`, width, "  "));
  }
  return lines;
}

function findingText({ severity, file, sheet, line, lines, column, message, code }: Finding): string {
  const where =
    file === null ? "" : `${placeText({ file, sheet, line })}${column === null ? "" : `, column ${column}`}: `;
  return `${severity === "info" ? "note" : severity}: ${where}${message}${alsoOn(lines)} [${code}]`;
}

function alsoOn(lines: readonly number[]): string {
  return lines.length === 0 ? "" : ` Also on ${lines.length === 1 ? "line" : "lines"} ${firstOf(lines)}.`;
}

/** The first few line numbers. */
function firstOf(lines: readonly number[]): string {
  const told = lines.slice(0, TOLD_PER_CODE).join(", ");
  return lines.length > TOLD_PER_CODE ? `${told} and others` : told;
}

function fixLines(fix: string, width: number): string[] {
  return fix === "" ? [] : [`  ${wrapText(`Fix: ${fix}`, width - 2, "    ")}`];
}

function tableName({ file, sheet, table }: ReadTable): string {
  return `${placeText({ file, sheet, line: null })}${tableNumber(table)}`;
}

/** Which of several tables in one place it is; nothing for the first. */
function tableNumber(table: number): string {
  return table > 1 ? `, table ${table}` : "";
}
