import { counted } from "../fleet/count-text.ts";
import type { Finding, SetAsideRow } from "../fleet/finding.ts";
import { listed } from "../fleet/listed.ts";
import { placeText } from "../fleet/place-text.ts";
import type { Reading } from "../sheets/reading.ts";
import { findingRows } from "./plan-head.ts";
import { setAsideInOrder } from "./set-aside-csv.ts";
import { plainText, wrapText } from "./text-width.ts";

/** Findings of one code in one file that are told in full; the others are counted. */
const TOLD_PER_CODE = 5;

/** Rows set aside, those of one reason and place together, with what to do, which the finding of the same line knows. */
export function setAsideLines({ setAside, findings }: Reading, width: number): string[] {
  const fixes = new Map(
    findings.flatMap((finding) =>
      [finding.line, ...finding.lines].map((line) => [placeKey({ ...finding, line }, finding.code), finding.fix]),
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
      ...fixLines(fixes.get(placeKey(row, row.reason)) ?? fixOfAny(findings, row), width),
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
    setAside.flatMap((row) => [placeKey(row, row.reason), placeKey({ ...row, line: null }, row.message)]),
  );
  const others = unreadTogether(findingRows(findings))
    .filter(
      (finding) =>
        !told.has(placeKey(finding, finding.code)) && !told.has(placeKey({ ...finding, line: null }, finding.message)),
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
      const key = placeKey(finding, "");
      const names = unread.get(key);
      names?.push(`"${finding.value}"`);
      if (!names) unread.set(key, [`"${finding.value}"`]);
      return names === undefined;
    })
    .map((finding) => {
      const names = finding.code === "column-unread" ? (unread.get(placeKey(finding, "")) ?? []) : [];
      if (names.length < 2) return finding;
      const message = `Nothing is read from the columns ${listed(names)}.`;
      return { ...finding, column: null, message };
    });
}

/** What a row and a finding share where they tell of the same thing. */
function placeKey({ file, sheet, line }: Pick<Finding, "file" | "sheet" | "line">, code: string): string {
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
