import type { GridRow } from "../grid.ts";
import { meansEmpty, textAt, textsAt } from "../values/cell-text.ts";
import { ROW_THINGS, type RowThing, rowThing, thingOfRow } from "../words/row-thing.ts";
import type { HeaderRows } from "./header-rows.ts";
import type { ColumnView } from "./score-column.ts";
import { isCanonical, type Output } from "./table.ts";
import { isComplete, outputsOfThing, settleThings } from "./thing-outputs.ts";

/** A list of all sorts: the columns (0-based) whose words say of each line what it is about, and what the lines yield. */
export interface ThingsByRow {
  columns: number[];
  outputs: Output[];
}

/** What heads a column whose cells say something else of their lines, even where they name things. */
const OF_ELSE =
  /site|place|holder|serial|lot|supplier|maker|duty|status|fits|alternatives|replacedby|task|order|key|value/;
/** The share of a column's filled cells that must name a thing. */
const MOSTLY = 0.5;
/** Lines looked at before all are, spread evenly over the list. */
const LOOKED_AT = 300;
/** The share of different names from which a list holds each thing once. */
const MOSTLY_ONCE = 0.7;
/** Lists that name things of several kinds line by line without being a list of them. */
const OTHER_LISTS: ReadonlySet<string> = new Set([
  "catalogue",
  "use_log",
  "on_order",
  "routine",
  "suppliers",
  "policy",
]);

/**
 * How a list of all sorts is read: devices, batteries and supplies each as what its line says it is. Null where the
 * lines are all of one sort, or the list is of something else, such as an order.
 *
 * @param plain  what the columns alone would yield
 */
export function thingsByRow(
  header: HeaderRows,
  rows: readonly GridRow[],
  views: readonly ColumnView[],
  plain: readonly Output[],
): ThingsByRow | null {
  const says = (concept: string) => views.some(({ meaning }) => meaning.says.split(" ").includes(concept));
  const otherList = plain.some(({ sheet, beside }) => !beside && OTHER_LISTS.has(sheet.kind));
  if (otherList && !(says("expiry") && (says("serial") || says("id")))) return null;
  if (plain.some(({ sheet }) => sheet.kind === "runtime_tests")) return null;
  const read = new Set(plain.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns)));
  if (isCanonical(plain) && views.every(({ column }) => read.has(column))) return null;
  if (plain.some((output) => numbersBatteries(output, views))) return null;
  const naming = thingColumns(rows, views);
  const sorted = new Map<RowThing, GridRow[]>();
  for (const row of rows) {
    const thing = thingOfRow(naming, row);
    if (thing === null) continue;
    const list = sorted.get(thing);
    if (list) list.push(row);
    else sorted.set(thing, [row]);
  }
  if (sorted.size < 2) return null;
  const [first] = naming as [number];
  const outputs = ROW_THINGS.flatMap((thing) =>
    sorted.has(thing) ? outputsOfThing(thing, header, sorted, first, views) : [],
  );
  if (outputs.some((output) => comesAgain(output, sorted.get(output.thing as RowThing) ?? []))) return null;
  const complete = new Set(outputs.filter(isComplete).flatMap(({ thing }) => thing ?? []));
  if (complete.size < 2 || (!complete.has("device") && datedAll(plain, sorted.get("battery") ?? []))) return null;
  settleThings(outputs, naming);
  return { columns: naming, outputs };
}

/** True where a column says itself that it holds the numbers of batteries: every line is about one, whatever its item is called. */
function numbersBatteries({ sheet, fields }: Output, views: readonly ColumnView[]): boolean {
  const serial = sheet.kind === "packs" ? fields.find(({ spec }) => spec.field === "serial")?.columns[0] : undefined;
  return views.some(({ column, meaning }) => column === serial && meaning.things === "battery");
}

/** The same for a list whose columns were mapped; null where the mapping is of no list of all sorts. */
export function thingsAsMapped(
  outputs: Output[],
  rows: readonly GridRow[],
  views: readonly ColumnView[],
): ThingsByRow | null {
  if (!outputs.some(({ thing }) => thing)) return null;
  const columns = thingColumns(rows, views);
  settleThings(outputs, columns);
  return { columns, outputs };
}

/** The columns (0-based) whose words say of most lines what they are about, the best first; empty where all are about one thing. */
function thingColumns(rows: readonly GridRow[], views: readonly ColumnView[]): number[] {
  const some = rows.filter((_, at) => at % Math.ceil(rows.length / LOOKED_AT) === 0);
  const naming = views
    .filter(
      ({ meaning, profile }) =>
        !OF_ELSE.test(meaning.says) && profile.filled > 1 && profile.numbers + profile.dates < MOSTLY,
    )
    .map((view) => ({ view, named: linesNaming(some, view.column) }))
    .filter(({ named }) => named > 0)
    .sort((a, b) => b.named - a.named || a.view.column - b.view.column)
    .map(({ view }) => view.column);
  return new Set(some.map((row) => thingOfRow(naming, row))).size < 2 ? [] : naming;
}

/** In how many lines a column names a thing; 0 where it does not in most of them. */
function linesNaming(rows: readonly GridRow[], column: number): number {
  const texts = textsAt(rows, column);
  const named = texts.filter((text) => rowThing(text) !== null).length;
  return named >= texts.length * MOSTLY ? named : 0;
}

/** True where what names a device or battery comes again line by line: a log of checks, not a list of what there is. */
function comesAgain({ sheet: { key }, fields }: Output, lines: readonly GridRow[]): boolean {
  const column = fields.find(({ spec }) => spec.field === key[0])?.columns[0];
  const names = column === undefined ? [] : lines.map((line) => textAt(line, column));
  const filled = names.filter((name) => !meansEmpty(name));
  return filled.length > 2 && new Set(filled).size < filled.length * MOSTLY_ONCE;
}

/** True where the plain reading takes every battery as a dated unit, and loses none for want of a date. */
function datedAll(plain: readonly Output[], batteries: readonly GridRow[]): boolean {
  const dated = plain.find(({ sheet }) => sheet.kind === "dated_stock");
  const expiry = dated?.fields.find(({ spec }) => spec.field === "expiry")?.columns[0];
  return expiry !== undefined && batteries.every((line) => !meansEmpty(textAt(line, expiry)));
}
