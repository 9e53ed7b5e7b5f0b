import { listed } from "../../fleet/listed.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { REPLACED } from "../tables/battery-dates.ts";
import { datedColumns } from "../tables/dated-columns.ts";
import { profileColumn } from "../tables/profile.ts";
import { CAME_OUT } from "../tables/replacements.ts";
import { MOSTLY_DIFFERENT } from "../tables/score-column.ts";
import type { Output, Table } from "../tables/table.ts";
import { fillsOne, textsAt } from "../values/cell-text.ts";
import { isAside, parseHeader } from "../words/parse-header.ts";
import type { RowPlan } from "./fill-row.ts";

/** The named columns (0-based) from which nothing is read; none where the table itself is not known. */
export function unreadColumns(
  { header, outputs, thingColumns }: Table,
  plans: readonly Pick<RowPlan, "counting" | "settled">[],
): number[] {
  if (outputs.length === 0) return [];
  const read = new Set([...thingColumns, ...outputs.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns))]);
  for (const { counting, settled } of plans)
    for (const column of [...Object.values(counting), ...Object.values(settled)]) read.add(column);
  return header.flatMap((name, column) => (name === null || read.has(column) ? [] : column));
}

/** A finding for each unread column, and one for the table where they are most of it. */
export function noteUnread(table: Table, unread: readonly number[], log: FindingLog): void {
  const { grid, number, header, headerLines } = table;
  noteLittleRead(table, unread, log);
  for (const column of unread) {
    const name = header[column] ?? "";
    const place = { file: grid.file, sheet: grid.sheet, line: headerLines[0] ?? null, column: column + 1, value: name };
    const filled = table.rows.some((row) => fillsOne([column], row));
    const code = filled ? unreadAs(name, column, table) : "column-unread";
    log.add(code, place, () => ({ message: UNREAD[code](shortened(name)) }), String(number));
  }
}

const UNREAD = {
  "column-unread": (name: string) => `Nothing is read from the column "${name}".`,
  "expiry-unread": (name: string) => `Nothing says what expires on the dates under "${name}", so none is used.`,
  "thing-unread": (name: string) =>
    `"${name}" tells of batteries or pads, and is not read: what it tells of is not in the plan.`,
  "capacity-undated": (name: string) =>
    `Nothing says when the capacities under "${name}" were measured, so none is used.`,
  "age-undated": (name: string) => `Nothing says when the ages under "${name}" were measured, so none is used.`,
  "count-unread": (name: string) =>
    `Each line, or each serial in it, was taken for one unit, and the numbers under "${name}" were not read.`,
} as const;

/**
 * What is lost with an unread column: expiries of nothing named, capacities and ages of packs of no day, how many units
 * there are, or nothing much.
 */
function unreadAs(name: string, column: number, { outputs, rows }: Table): keyof typeof UNREAD {
  const { says, things, coverage, words } = parseHeader(name);
  const uncounted = ({ sheet, fields, own }: Output) =>
    (sheet.kind === "packs" && says === "quantity") ||
    (sheet.kind === "dated_stock" &&
      own.length > 1 &&
      !fields.some(({ spec }) => /^(quantity|label)$/.test(spec.name)));
  if (/quantity|box|^$/.test(says) && things === "" && outputs.every((output) => output.beside || uncounted(output)))
    if (profileColumn(rows, column).severalEach) return "count-unread";
  if (
    coverage >= SURE &&
    /^(expiry|expiry lot|date expiry)$/.test(says) &&
    things === "" &&
    outputs.some(ofUnits) &&
    profileColumn(rows, column).dates > 0
  )
    return "expiry-unread";
  if (ofThings(name, column, rows) && outputs.some(ofUnits)) return "thing-unread";
  const kinds = new Set(outputs.map(({ sheet }) => sheet.kind));
  const ofPacks = things === "battery" || (things === "" && (kinds.has("packs") || kinds.has("runtime_tests")));
  const { dates, numbers } = profileColumn(rows, column);
  // the battery's first day or its last
  if (ofPacks && says === "install" && REPLACED.test(words) && dates > 0) return "thing-unread";
  const began = outputs.some(({ fields }) => fields.some(({ spec }) => /^(inService|made)$/.test(spec.field)));
  if (ofPacks && AGE.test(words) && numbers > 0 && !began) return "age-undated";
  const measures =
    /\b(capacity|wh|ah|minutes)\b/.test(says) &&
    !/rated|least|aside|lot/.test(says) &&
    /^(battery|test)?$/.test(things);
  return measures && kinds.has("packs") && !kinds.has("runtime_tests") ? "capacity-undated" : "column-unread";
}

/** True for a column that dates or counts batteries or pads, or numbers batteries, which are there and not gone. */
function ofThings(name: string, column: number, rows: Table["rows"]): boolean {
  const { says, things, coverage } = parseHeader(name);
  if (CAME_OUT.test(name) || /retired|aside/.test(says)) return false;
  const expires = /^(battery|pads) ((.* )?(expiry|next$)|$)/.test(`${things} ${says}`);
  const numbered = things === "battery" && says.includes("serial");
  const dated = things + says === "pads" && textsAt(rows, column).some((text) => /\d[-/.]\d\d/.test(text));
  const counted = coverage >= SURE && /^(battery|pads)$/.test(things) && /^(quantity)?$/.test(says);
  const { dates, severalEach, distinct, batteries } = profileColumn(rows, column);
  // "Component" over batteries and sensors
  const sorts = things + says === "" && distinct < MOSTLY_DIFFERENT && batteries > 0;
  return (
    sorts || dated || (expires && dates > 0) || (counted && severalEach) || (numbered && distinct > MOSTLY_DIFFERENT)
  );
}

/** True for rows of things that may expire, not of what happened to them or what they cost. */
function ofUnits({ sheet: { kind } }: Output): boolean {
  return kind !== "use_log" && kind !== "catalogue";
}

/** Words, folded, for how old a thing is. */
const AGE = /\b(age|alter|edad|leeftijd)\b/;

/** The share of a header's letters that must be known where what is lost with its column is told. */
const SURE = 0.84;

/** A finding where more columns are left over than read, not counting those that a fleet's sheets hold besides. */
function noteLittleRead(
  { grid: { file, sheet }, number, header, headerLines, rows, outputs }: Table,
  unread: readonly number[],
  log: FindingLog,
): void {
  const ticked = datedColumns(header);
  const open = unread.filter(
    (column) =>
      !ticked.includes(column) &&
      !isAside(parseHeader(header[column] ?? "")) &&
      rows.some((row) => fillsOne([column], row)),
  );
  const read = header.filter((name) => name !== null).length - unread.length;
  if (open.length <= read) return;
  const as = listed([...new Set(outputs.map(({ sheet: { kind } }) => kind))]);
  const place = { file, sheet, line: headerLines[0] ?? null, column: null, value: null };
  const message = `Of ${read + open.length} columns only ${read} could be understood, as ${as}; the table may be something else.`;
  log.add("little-read", place, () => ({ message }), String(number));
}
