import type { SheetKind } from "../../fleet/columns.ts";
import { POINTS } from "../words/meanings.ts";
import { type HeaderMeaning, isAside } from "../words/parse-header.ts";
import { VOCABULARY } from "../words/vocabulary.ts";
import type { ColumnView } from "./score-column.ts";
import { columnsOf, type Output } from "./table.ts";

/** Points for each required column, taken away where what makes a kind likely is missing. */
const REQUIRED_POINTS = 0.5;
const UNLIKELY = 2;
/** The share of different serials from which each stands once, and what that is worth. */
const MOSTLY_ONCE = 0.9;
const SERIAL_POINTS = 1.5;
/** What speaks against stock of one item each of whose lines stands for another device. */
const LINE_A_DEVICE = 4;
/** What a title above the table, or what its cells name, is worth. */
const TITLE_POINTS = 2.5;

/** Points for a kind of rows beyond those of its columns' own words: what is required, titles and cells. */
export function speaksFor(output: Output | null, views: readonly ColumnView[], title: HeaderMeaning | null): number {
  const ofDevices = output !== null && tellsDevicesAlone(output, views, title);
  return bonus(output, views) + titlePoints(output, title) - (ofDevices ? 2 * POINTS.byWords : 0);
}

/** A title that names a thing ("Batteries") speaks for the sheet of that thing, enough to settle a tie. */
function titlePoints(output: Output | null, title: HeaderMeaning | null): number {
  if (!output || !title) return 0;
  const things: Partial<Record<SheetKind, string>> = {
    devices: "device",
    packs: "battery",
    runtime_tests: "test",
    dated_stock: "pads",
  };
  const own = things[output.sheet.kind];
  return own !== undefined && title.things.split(" ").includes(own) ? TITLE_POINTS : 0;
}

/** What speaks for a kind beyond its columns' own words. */
function bonus(output: Output | null, views: readonly ColumnView[]): number {
  if (output === null) return 0;
  const { sheet, fields, implied } = output;
  const has = (field: string) => fields.some(({ spec }) => spec.field === field) || implied[field] !== undefined;
  const required = fields.filter(({ spec }) => spec.required).length * REQUIRED_POINTS;
  const unlikely: Partial<Record<SheetKind, boolean>> = {
    on_order:
      (!has("order") && !has("arrives") && !has("supplier") && !logsOrders(views)) ||
      (has("expiry") && liesSomewhere(views)),
    catalogue:
      fields.length < 2 ||
      comesAgain("item", output, views) ||
      (liesSomewhere(views) && views.some(({ meaning }) => meaning.says === "expiry")),
    // A bare serial beside a battery's columns is hardly a device's.
    devices:
      fields[0]!.points <= 4 &&
      views.some(({ things }) => things === "battery") &&
      !views.some(({ things }) => things.includes("device")),
  };
  // what a reason is given for happened on a day
  const reasoned = sheet.kind === "use_log" && has("reason") && has("date") ? 1 : 0;
  const ordered = (implied.order ?? implied.arrives) !== undefined || logsOrders(views);
  const ofOrders = sheet.kind === "on_order" && ordered ? TITLE_POINTS : 0;
  const against = (unlikely[sheet.kind] ? UNLIKELY : 0) + (isLineADevice(output, views) ? LINE_A_DEVICE : 0);
  return required + onceOrOften(output, views) + namedInCells(output, views) + reasoned + ofOrders - against;
}

/** True where columns say how many of what does not expire were ordered, on which day, and whether or when they came. */
export function logsOrders(views: readonly ColumnView[]): boolean {
  const says = (what: RegExp) => views.some(({ meaning }) => what.test(meaning.says));
  const ordered = ({ meaning: { says, words }, profile }: ColumnView) =>
    says === "aside" && ORDERED.test(words) && !/^last/.test(words) && profile.dates > 0;
  return views.some(ordered) && says(/^quantity/) && says(/^install/) && !says(/expiry/);
}

/** True for dated units of what the header names, each at a device of its own: a list of devices with what they carry. */
function isLineADevice({ sheet, fields, implied }: Output, views: readonly ColumnView[]): boolean {
  if (sheet.kind !== "dated_stock" || implied.item === undefined) return false;
  const place = fields.find(({ spec }) => spec.field === "place")?.columns[0];
  const view = views.find(({ column }) => column === place);
  return view?.things.includes("device") === true && view.profile.distinct > MOSTLY_ONCE;
}

/** The column that holds a field of the output; undefined where none does. */
function viewOf(field: string, output: Output, views: readonly ColumnView[]): ColumnView | undefined {
  const [column] = columnsOf(output, field);
  return views.find((view) => view.column === column);
}

/** True where what names each row of a list stands in several of them. */
function comesAgain(field: string, output: Output, views: readonly ColumnView[]): boolean {
  const profile = viewOf(field, output, views)?.profile;
  return profile !== undefined && profile.filled > 2 && profile.distinct < MOSTLY_ONCE;
}

const ON_HAND = /\b(count(ed)?|on hand|in stock|qoh|stock|remaining|left|balance)\b/i;
const ORDERED = /order|\bpo\b|bestel|command|pedi/;

/** True where the quantity is headed as what is there, or another column gives that. */
export function countsStock(output: Output, views: readonly ColumnView[]): boolean {
  return (
    ON_HAND.test(viewOf("quantity", output, views)?.name ?? "") ||
    views.some(
      ({ column, meaning: { says, words } }) =>
        says === "quantity" && !output.own.includes(column) && !ORDERED.test(words),
    )
  );
}

/**
 * True for dated quantities with a supplier, an order or a price and no reason: what was bought that day, not used. What
 * has a price beside the place where it was is used there.
 */
export function isPurchase({ sheet, fields }: Output, views: readonly ColumnView[]): boolean {
  const has = (name: string) => fields.some(({ spec }) => spec.field === name);
  const told = has("place") ? /supplier|order/ : /price|supplier|order/;
  const bought = views.some(
    ({ meaning: { says, words }, profile }) =>
      told.test(says) ||
      (profile.dates > MOSTLY_ONCE && words.split(" ").some((word) => VOCABULARY.get(word) === "bought")),
  );
  return sheet.kind === "use_log" && bought && !has("reason");
}

/** True where a column says where things are, or their lot: what has an expiry besides is stock, whoever delivered it for how much. */
function liesSomewhere(views: readonly ColumnView[]): boolean {
  return views.some(({ meaning, things }) => things === "" && /place|site|holder|lot/.test(meaning.says));
}

/** Cells that name devices ("AED") or batteries under a type or item speak for a list of them. */
function namedInCells(output: Output, views: readonly ColumnView[]): number {
  const { sheet } = output;
  const profile = viewOf(sheet.kind === "devices" ? "type" : "item", output, views)?.profile;
  if (!profile) return 0;
  const share = sheet.kind === "devices" ? profile.devices : sheet.kind === "packs" ? profile.batteries : 0;
  return share >= 0.5 ? TITLE_POINTS : 0;
}

/** True for serials whose cells name devices, of which no more is told than a list of devices tells of its own. */
function tellsDevicesAlone(output: Output, views: readonly ColumnView[], title: HeaderMeaning | null): boolean {
  const named = viewOf("item", output, views)?.profile;
  return (
    output.sheet.kind === "packs" &&
    named !== undefined &&
    named.devices > named.batteries &&
    !title?.things.includes("battery") &&
    viewOf("serial", output, views)?.things === "" &&
    output.fields.every(({ spec: { field }, points }) =>
      field === "item" ? points < POINTS.canonical : !/^device|^cycles|Because/.test(field),
    )
  );
}

/** Serials that stand once speak for a list of packs, serials that come again for one of tests. */
function onceOrOften(output: Output, views: readonly ColumnView[]): number {
  const { sheet } = output;
  if (sheet.kind !== "packs" && sheet.kind !== "runtime_tests") return 0;
  const profile = viewOf("serial", output, views)?.profile;
  if (!profile || profile.filled < 2) return 0;
  return profile.distinct > MOSTLY_ONCE === (sheet.kind === "packs") ? SERIAL_POINTS : 0;
}

/**
 * True for a lone number or name among columns that say something else: no list of packs or suppliers, nor one of
 * devices unless their column says so.
 */
export function isLone({ sheet, fields }: Output, views: readonly ColumnView[]): boolean {
  const [only, ...others] = fields;
  if (others.length > 0 || only === undefined) return false;
  const bare = sheet.kind === "devices" && only.points < POINTS.odd;
  if (!bare && sheet.kind !== "packs" && sheet.kind !== "suppliers") return false;
  return views.filter(({ column, meaning }) => !only.columns.includes(column) && !isAside(meaning)).length >= 2;
}
