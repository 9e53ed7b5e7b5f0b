import { columnOfField, type SheetKind, sheetSpec } from "../../fleet/columns.ts";
import type { Cell, GridRow } from "../grid.ts";
import { cellText, meansEmpty } from "../values/cell-text.ts";
import { isDate } from "../values/date-text.ts";
import { monthOfWord } from "../values/month-words.ts";
import { foldAccents } from "../words/fold.ts";
import { parseHeader } from "../words/parse-header.ts";
import { saysUse } from "../words/says-use.ts";
import { VOCABULARY } from "../words/vocabulary.ts";
import { assign } from "./assign.ts";
import { MEASURE_BY_UNIT } from "./carried-unit.ts";
import { fieldSource } from "./field-source.ts";
import { knownNames, nameIn } from "./header-rows.ts";
import type { Heading } from "./heading.ts";
import { looksLikeData } from "./looks-like-data.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output, Unclear } from "./table.ts";

/** Fewest columns headed by dates that make a table with a column for each month. */
const FEWEST = 2;
const MOSTLY = 0.5;

/** Neighbouring columns (0-based) named by dates written alike, such as "Mar 2026" or "2026-03"; month names alone too. */
export function datedColumns(names: readonly (Cell | undefined)[]): number[] {
  const years = yearColumns(names);
  if (years.length > 0) return years;
  const found = names.flatMap((cell, column) => {
    const name = typeof cell === "string" ? nameIn(cell) : null;
    if (name === null || /^\d+$/.test(name)) return [];
    return isDate(dateIn(name)) || monthOfWord(plain(name)) !== null ? [column] : [];
  });
  const texts = found.map((column) => plain(String(names[column])));
  const shapes = new Set(texts.map((text) => text.replace(/\d+/g, "0").replace(/[a-z]+/g, "a")));
  const together = found.every((column, at) => column === found[0]! + at);
  return found.length >= FEWEST && together && shapes.size === 1 && new Set(texts).size === found.length ? found : [];
}

/** The date of a name that says besides that something was tested or measured on it: "Test 23/02/2026", "Cap. Mar 2026 (%)". */
function dateIn(name: string): string {
  const whole = name.replace(/\s*[([].*$/, "");
  for (const { index } of whole.matchAll(/\s+/g)) {
    const date = whole.slice(index).trim();
    const { things, says } = parseHeader(whole.slice(0, index));
    if (isDate(date) && /\b(test|capacity|minutes)\b/.test(`${things} ${says}`)) return date;
  }
  return name;
}

/** Neighbouring columns (0-based) whose names differ by the year in them alone: "Cap 2024 (%)", "Cap 2025 (%)". */
function yearColumns(names: readonly (Cell | undefined)[]): number[] {
  const found = names.flatMap((cell, column) => (yearOf(cell) === null ? [] : [column]));
  const texts = found.map((column) => plain(String(names[column])));
  const together = found.every((column, at) => column === found[0]! + at);
  const alike = new Set(texts.map((text) => text.replace(YEAR, "")));
  return found.length >= FEWEST && together && alike.size === 1 && new Set(texts).size === found.length ? found : [];
}

/** A year in this century that stands alone among a name's digits. */
const YEAR = /(?<![\d-])20\d\d(?![\d-])/;

function yearOf(cell: Cell | undefined): string | null {
  const name = typeof cell === "number" ? String(cell) : typeof cell === "string" ? nameIn(cell) : null;
  return name !== null && /^\D*20\d\d\D*$/.test(name) && !hasMonth(name) ? (YEAR.exec(name)?.[0] ?? null) : null;
}

function hasMonth(name: string): boolean {
  return plain(name)
    .split(/[^a-z]+/)
    .some((word) => word !== "" && monthOfWord(word) !== null);
}

function plain(name: string): string {
  return foldAccents(name).toLowerCase().replace(/\.$/, "");
}

/** Numbers from here on may be a spreadsheet's days. */
const DAY_NUMBERS = 30_000;

/** True for a row that names something known and heads further columns by dates, with only numbers below them. */
export function headsDates({ cells }: GridRow, next: GridRow | undefined): boolean {
  const dated = datedColumns(cells);
  if (dated.length === 0 || !next) return false;
  const others = cells.filter((_, column) => !dated.includes(column));
  if (others.some((cell) => looksLikeData([cell]))) return false;
  const { known, filled } = knownNames(others);
  const below = dated.map((column) => cellText(next.cells[column] ?? null)).filter((text) => !meansEmpty(text));
  const numbers = below.filter((text) => /^[\d.,]+ ?%?$/.test(text) && Number.parseFloat(text) < DAY_NUMBERS);
  return known >= 1 && known * 2 >= filled && below.length > 0 && numbers.length === below.length;
}

/**
 * What a table with a column for each date yields: a row for each number. Null where its columns are no such ones;
 * what is missing where nothing says what the numbers count.
 */
export function datedOutputs(views: readonly ColumnView[], heading: Heading | null): Output[] | Unclear | null {
  const columns = new Set(datedColumns(views.map(({ name }) => name)).map((at) => (views[at] as ColumnView).column));
  if (columns.size === 0) return null;
  const dated = views.filter(({ column }) => columns.has(column));
  // what was ticked or remarked on each date is no number
  if (dated.some(({ profile }) => profile.filled > 0 && profile.numbers < MOSTLY)) return null;
  const rest = views.filter(({ column }) => !columns.has(column));
  const tests = assign(sheetSpec("runtime_tests"), rest).filter(({ spec }) => spec.name === "serial");
  const says = `${heading?.text ?? ""} ${dated[0]?.groupSubject ?? ""}`;
  const expires = !saysUse(says) && says.split(/\n/).some((line) => parseHeader(line).says.includes("expiry"));
  const kind: SheetKind = tests.length > 0 ? "runtime_tests" : expires ? "dated_stock" : "use_log";
  const sheet = sheetSpec(kind);
  // one verdict beside several tests is not of each
  const fields = assign(sheet, rest).filter(
    ({ spec }) => (spec.type === "text" || spec.type === "choice") && spec.name !== "result",
  );
  const has = (name: string) => fields.some(({ spec }) => spec.name === name);
  const item = has("item") || !expires ? "" : knownWords(heading?.title?.subject ?? "");
  if (!has("item") && !has("serial") && item === "") return null;
  const measured = kind === "runtime_tests" ? measuredBy(dated, heading) : "quantity";
  const named = heading?.named ?? "";
  const dates = dated.map(({ name }) => dateOf(name, says) ?? dateOf(name, named));
  if (measured === null || dates.includes(null) || (kind === "use_log" && !saysUse(says + named)))
    return unclear(dated, dates.includes(null));
  const spec = columnOfField(sheet, measured);
  return dated.map((view, at) => ({
    sheet,
    fields: [...fields, fieldSource(spec, view, 6)],
    implied: { [kind === "dated_stock" ? "expiry" : "date"]: dates[at] as string, ...(item !== "" && { item }) },
    own: [view.column],
    ...(yearOf(view.name) !== null && { presumed: "mid-year" as const }),
  }));
}

/** The words of a title that name things or for whom they are: "ADULT PADS" of "ADULT PADS - CALENDAR". */
function knownWords(subject: string): string {
  const words = subject.split(" ").filter((word) => VOCABULARY.has(plain(word)));
  return words.join(" ");
}

function unclear(dated: readonly ColumnView[], noYear: boolean): Unclear {
  const names = dated.map(({ name }) => name).slice(0, 3);
  return {
    message: `The columns ${names.join(", ")} are dates, and nothing says ${noYear ? "of which year" : "what their numbers count"}.`,
    fix: 'Write it above the table ("Consumption 2026", "Expiry 2027", "Capacity in %"), or give each date a row of its own.',
  };
}

/** A header's date; a month without a year takes the only one that a text names. */
function dateOf(name: string, says: string): string | null {
  const date = dateIn(name);
  if (isDate(date)) return date;
  const year = yearOf(name);
  if (year !== null) return `${year}-H1`;
  const years = new Set(says.match(/(?<!\d)20\d\d(?!\d)/g));
  return years.size === 1 && !/20\d\d\s?[/-]\s?\d/.test(says) ? `${name} ${[...years][0]}` : null;
}

/** The field of a test that the numbers are; null where neither heading nor cells say it. */
function measuredBy(dated: readonly ColumnView[], heading: Heading | null): string | null {
  const above = dated.map(({ groupSubject, name }) => `${groupSubject} ${name}`);
  // how far it was charged is no test of it
  if (above.some((text) => parseHeader(text).says.includes("aside"))) return null;
  const texts = [...(heading?.text.split("\n") ?? []), ...above];
  const said = new Set(texts.flatMap((text) => parseHeader(text).says.split(" ")));
  for (const { profile } of dated) said.add(MEASURE_BY_UNIT[profile.unit] ?? "");
  const measured = ["wh", "ah", "minutes", "capacity"].find((word) => said.has(word));
  return measured === "capacity" ? "percent" : (measured ?? null);
}
