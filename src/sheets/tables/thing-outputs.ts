import { type SheetKind, sheetSpec } from "../../fleet/columns.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { GridRow } from "../grid.ts";
import { textsAt } from "../values/cell-text.ts";
import type { RowThing } from "../words/row-thing.ts";
import { assign } from "./assign.ts";
import { columnViews } from "./column-views.ts";
import { isDatedOnly } from "./dated-batteries.ts";
import type { HeaderRows } from "./header-rows.ts";
import type { ColumnView } from "./score-column.ts";
import { columnsOf, type Output } from "./table.ts";

/** The lines of a list of all sorts, by what each is about. */
type SortedLines = ReadonlyMap<RowThing, readonly GridRow[]>;

/** What names a thing among its like. */
const NAMES_ONE = /^(|id|name|serial|unit)( (name|unit|serial))*$/;
const OF_THE_DEVICE = /^(serial|id|install|made|retired|type|category|name)$/;

/** What the lines of one thing yield; not complete where its columns lack something that each needs. */
export function outputsOfThing(
  thing: RowThing,
  header: HeaderRows,
  sorted: SortedLines,
  sorting: number,
  all: readonly ColumnView[],
): Output[] {
  const lines = sorted.get(thing) ?? [];
  const others = [...sorted].flatMap(([other, rows]) => (other === thing ? [] : rows));
  const devices = sorted.get("device") ?? [];
  const hosts =
    thing === "device" ? [] : all.filter((view) => namesHost(view, lines, devices)).map(({ column }) => column);
  const filled = columnViews(header, lines).filter(({ column, profile }) => column !== sorting && profile.filled > 0);
  const numbered = filled.some(({ things, meaning }) => things === "" && meaning.says.includes("serial"));
  const isAnothers = (view: ColumnView) =>
    isBesideHost(view, hosts) ||
    (numbered && namesOneDevice(view) && !hosts.includes(view.column)) ||
    (namesItem(view) && namesOthers(view.column, lines, others, sorting));
  const views = filled
    .filter((view) => thing === "device" || !isAnothers(view))
    .map((view) => asOfThing(view, thing, hosts));
  const kinds: SheetKind[] =
    thing === "device" ? ["devices"] : thing === "supply" ? ["dated_stock"] : ["packs", "dated_stock"];
  const outputs = kinds.map((kind) => outputOf(kind, thing, views));
  const complete = outputs.filter(isComplete);
  return complete.length === 0 ? outputs.slice(0, 1) : complete;
}

/**
 * Settles which lines of its thing yield each output: all of them, but a battery is a dated unit only where it has an
 * expiry, and a pack besides only where both are known for one.
 *
 * @param sorting  the columns that say what a line is about
 */
export function settleThings(outputs: readonly Output[], sorting: number[]): void {
  for (const output of outputs.filter(({ thing }) => thing)) {
    const [packs, dated] = outputs.filter(({ thing }) => thing === output.thing);
    output.own = dated && output === dated ? [...columnsOf(dated, "expiry")] : sorting;
    if (output === packs && dated) output.unless = isDatedOnly(packs, dated);
  }
}

/** True where the columns hold all that a row of the output needs. */
export function isComplete({ sheet, fields, thing }: Output): boolean {
  return sheet.columns.every(
    ({ required, field }) =>
      !required || (field === "item" && thing) || fields.some(({ spec }) => spec.field === field),
  );
}

function outputOf(kind: SheetKind, thing: RowThing, views: readonly ColumnView[]): Output {
  const sheet = sheetSpec(kind);
  return { sheet, fields: assign(sheet, views), implied: {}, own: [], thing };
}

/** True for a column of devices that names, in lines of other things, the device that holds them. */
function namesHost(view: ColumnView, lines: readonly GridRow[], devices: readonly GridRow[]): boolean {
  if (!namesOneDevice(view)) return false;
  const own = namesIn(devices, view.column);
  const here = namesIn(lines, view.column);
  return here.size > 0 && (own.size === 0 || [...here].filter((name) => own.has(name)).length * 2 >= here.size);
}

function namesOneDevice({ things, meaning }: ColumnView): boolean {
  return things.includes("device") && NAMES_ONE.test(meaning.says);
}

/** What else says where a thing is, beside the device that holds it. */
function isBesideHost({ column, meaning }: ColumnView, hosts: readonly number[]): boolean {
  return hosts.length > 0 && !hosts.includes(column) && /^(site|place)$/.test(meaning.says);
}

function namesItem({ meaning, things }: ColumnView): boolean {
  return /^(type|category|name)$/.test(meaning.says) || (meaning.says === "" && things === "item");
}

/** True where a column names the devices, or sorts things less finely than the word of their line does. */
function namesOthers(column: number, lines: readonly GridRow[], others: readonly GridRow[], sorting: number): boolean {
  const here = namesIn(lines, column);
  const there = namesIn(others, column);
  return here.size < namesIn(lines, sorting).size || [...here].some((name) => there.has(name));
}

function namesIn(rows: readonly GridRow[], column: number): Set<string> {
  const texts = textsAt(rows, column);
  return new Set(texts.map(nameKey));
}

/** A column as it is meant in the lines of one thing: "Asset ID" is a battery's serial there, "Serial / lot" a lot of pads. */
function asOfThing(view: ColumnView, thing: RowThing, hosts: readonly number[]): ColumnView {
  const { things, meaning, column } = view;
  const told = meaning.says.split(" ");
  if ((told.includes("lot") && told.includes("serial")) || (thing === "supply" && things + meaning.says === "id"))
    return { ...view, things: "", joined: null, meaning: { ...meaning, says: thing === "supply" ? "lot" : "serial" } };
  if (thing === "device" && things === "item" && meaning.says === "") return { ...view, things: "device item" };
  if (thing === "device")
    return /^(|item)$/.test(things) && OF_THE_DEVICE.test(meaning.says) ? { ...view, things: "device" } : view;
  if (hosts.includes(column) || !things.includes("device")) return view;
  const says = NAMES_ONE.test(meaning.says) ? "serial" : meaning.says;
  return { ...view, things: "", joined: null, meaning: { ...meaning, says } };
}
