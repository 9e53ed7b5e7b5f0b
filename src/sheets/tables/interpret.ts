import { type ColumnSpec, SHEETS, type SheetSpec } from "../../fleet/columns.ts";
import { POINTS } from "../words/meanings.ts";
import type { HeaderMeaning } from "../words/parse-header.ts";
import { fieldSource, groupOutputs, impliedItem } from "./group-outputs.ts";
import { type ColumnView, MIN_POINTS, pointsFor } from "./score-column.ts";
import { speaksFor } from "./speaks-for.ts";
import type { FieldSource, Output } from "./table.ts";

/** A reading of a whole header: what rows it yields, and how many points its columns bring. */
export interface Interpretation {
  outputs: Output[];
  points: number;
}

/** Two readings within this many points of each other are a tie, unless they yield the same kinds of rows. */
const TIE_MARGIN = 1.5;

/** What each kind of row beyond the first costs, so that one sheet is not read as two without need. */
const OUTPUT_COST = 3;

/** Columns of which two make a price list. */
const PRICE_LIST: ReadonlySet<string> = new Set([
  "price",
  "leadDays",
  "unitsPerBox",
  "minimumOrder",
  "priceBreaks",
  "gtin",
  "shelfMonths",
]);
/** Currencies as the header of prices names them. */
const CURRENCIES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(["EUR", "USD", "GBP", "CHF", "CAD", "AUD", "NZD"].map((code) => [code.toLowerCase(), code])),
  "€": "EUR",
  "£": "GBP",
};
/** What it costs to read a column as of another thing than the one it stands behind. */
const FAR_COST = 4;

/** The best reading of a header's columns; the tied readings where two are as good; nothing where none fits. */
export function interpret(
  views: readonly ColumnView[],
  title: HeaderMeaning | null,
): { best: Interpretation | null; tied: Interpretation[] } {
  const readings: Interpretation[] = [];
  for (const sheet of [null, ...SHEETS]) {
    for (const near of [true, false]) {
      const reading = readAs(sheet, views, title, near);
      if (reading) readings.push(reading);
    }
  }
  readings.sort((a, b) => b.points - a.points);
  const [best] = readings;
  if (!best) return { best: null, tied: [] };
  const rivals = readings.filter(
    (other) => best.points - other.points < TIE_MARGIN && kindsOf(other) !== kindsOf(best),
  );
  return { best, tied: rivals.length > 0 && !isCanonical(best) ? [best, ...rivals] : [] };
}

/** The kinds of rows that a reading yields, as one text. */
export function kindsOf({ outputs }: Interpretation): string {
  return [...new Set(outputs.map(({ sheet }) => sheet.kind))].sort().join(" and ");
}

function isCanonical({ outputs }: Interpretation): boolean {
  return outputs.every(({ fields }) => fields.every(({ points }) => points >= 10));
}

function readAs(
  sheet: SheetSpec | null,
  views: readonly ColumnView[],
  title: HeaderMeaning | null,
  near: boolean,
): Interpretation | null {
  const ofDevices = startsWithDevices(views);
  const once = mainViews(views);
  const apart = sheet === null ? [] : once.filter((view) => belongsLeft(view, sheet, ofDevices));
  const main = sheet === null ? [] : assign(sheet, near ? once.filter((view) => !apart.includes(view)) : once);
  const output = sheet === null ? null : mainOutput(sheet, main, views, title);
  if (sheet !== null && output === null) return null;
  const taken = new Set((output?.fields ?? []).flatMap(({ columns }) => columns));
  const groups = groupOutputs(views, taken, output, ofDevices);
  const outputs = [...(output ? [output] : []), ...groups].sort(
    (a, b) => SHEETS.indexOf(a.sheet) - SHEETS.indexOf(b.sheet),
  );
  if (outputs.length === 0 || (output !== null && onlyNamesPacks(output, groups))) return null;
  const far = near || !apart.some(({ column }) => output?.own.includes(column)) ? 0 : FAR_COST;
  const points = outputs.reduce(
    (sum, each) =>
      sum +
      each.fields.reduce(
        (own, field) =>
          own + (each.own.some((column) => field.columns.includes(column)) ? field.points * field.columns.length : 0),
        0,
      ),
    0,
  );
  return {
    outputs,
    points:
      points -
      OUTPUT_COST * (outputs.filter(({ fields }) => fields.some((field) => field.points > 0)).length - 1) +
      speaksFor(output, views, title) -
      far,
  };
}

/** What a test says of its pack too. */
const OF_A_TEST: ReadonlySet<string> = new Set(["serial", "temperatureC", "cycles"]);

/** True where packs would be listed beside their tests with nothing said of them that a test does not say: tests alone do. */
function onlyNamesPacks({ sheet, fields }: Output, groups: readonly Output[]): boolean {
  return (
    sheet.kind === "packs" &&
    fields.every(({ spec }) => OF_A_TEST.has(spec.field)) &&
    groups.some((group) => group.sheet.kind === "runtime_tests")
  );
}

/** Columns that stand once only: "Pad 1 exp" beside "Pad 2 exp" is for the groups. */
function mainViews(views: readonly ColumnView[]): ColumnView[] {
  const seen = new Map<string, Set<string>>();
  const sort = ({ meaning, things }: ColumnView) => `${things}/${meaning.says}`;
  const member = ({ variant, index }: ColumnView) => `${variant}/${index}`;
  for (const view of views) {
    const members = seen.get(sort(view)) ?? new Set();
    seen.set(sort(view), members.add(member(view)));
  }
  return views.filter((view) => (seen.get(sort(view))?.size ?? 0) <= 1);
}

/** Concepts that belong to the whole line wherever they stand. */
const OF_THE_LINE = /site|place|duty/;

/** True for a column without a thing of its own that stands behind another thing's: it says something of that thing. */
function belongsLeft({ things, after, meaning }: ColumnView, sheet: SheetSpec, ofDevices: boolean): boolean {
  if (things !== "" || after === "" || OF_THE_LINE.test(meaning.says)) return false;
  if (after === "device") return ofDevices && sheet.kind === "packs";
  return (
    sheet.kind === "devices" ||
    (after === "battery" ? sheet.kind !== "packs" && sheet.kind !== "runtime_tests" : sheet.kind === "packs")
  );
}

/** True where the columns start with a device and name its battery later: a list of devices, not of batteries. */
function startsWithDevices(views: readonly ColumnView[]): boolean {
  return (
    views.find(({ things }) => things !== "")?.things.includes("device") === true &&
    views.some(({ things }) => things === "battery")
  );
}

/** Gives each field its best column, best pairs first; a column like it in every word is a copy. */
export function assign(sheet: SheetSpec, views: readonly ColumnView[]): FieldSource[] {
  const pairs: { spec: ColumnSpec; view: ColumnView; points: number }[] = [];
  for (const view of views) {
    for (const spec of sheet.columns) {
      const points = pointsFor(view, sheet, spec);
      if (points >= MIN_POINTS) pairs.push({ spec, view, points });
    }
  }
  pairs.sort((a, b) => b.points - a.points || a.view.column - b.view.column);
  const fields = new Map<ColumnSpec, { source: FieldSource; words: string }>();
  const taken = new Set<number>();
  for (const { spec, view, points } of pairs) {
    if (taken.has(view.column)) continue;
    const before = fields.get(spec);
    if (!before) fields.set(spec, { source: fieldSource(spec, view, points), words: wordsOf(view) });
    else if (before.words === wordsOf(view)) before.source.columns.push(view.column);
    else continue;
    taken.add(view.column);
  }
  return sheet.columns.flatMap((spec) => fields.get(spec)?.source ?? []);
}

function wordsOf({ meaning, groupSubject }: ColumnView): string {
  return `${groupSubject}/${meaning.words}`;
}

function mainOutput(
  sheet: SheetSpec,
  fields: FieldSource[],
  views: readonly ColumnView[],
  title: HeaderMeaning | null,
): Output | null {
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  const output: Output = { sheet, fields, implied: {}, own: fields.flatMap(({ columns }) => columns) };
  if (sheet.kind === "dated_stock" && has("label")) return output;
  if (sheet.kind === "dated_stock" && has("expiry") && !has("item")) {
    const item =
      impliedItem(views.filter(({ column }) => output.own.includes(column))) || (title?.things ? title.subject : "");
    if (item === "") return null;
    output.implied.item = item;
  }
  if (sheet.kind === "catalogue") Object.assign(output.implied, impliedByPrice(fields, views));
  // Item and quantity alone may be stock, a count or a wish: only their own sheet's names say that they are ordered.
  const ordered = has("order") || has("arrives") || has("supplier");
  if (
    sheet.kind === "on_order" &&
    !ordered &&
    (fields.length < views.length || fields.some(({ points }) => points < POINTS.canonical))
  )
    return null;
  // A price list often leaves the kind to the item's name; it is a price list by what else it says.
  const priced = sheet.kind === "catalogue" && fields.filter(({ spec }) => PRICE_LIST.has(spec.field)).length >= 2;
  const complete = sheet.columns.every(
    ({ required, field }) =>
      !required || has(field) || output.implied[field] !== undefined || (priced && field === "kind"),
  );
  return complete && (sheet.oneOf.length === 0 || sheet.oneOf.some(has)) ? output : null;
}

/** What the header of the prices says of them: "Price per box (EUR)". */
function impliedByPrice(fields: readonly FieldSource[], views: readonly ColumnView[]): Record<string, string> {
  const column = fields.find(({ spec }) => spec.field === "price")?.columns[0];
  const meaning = views.find((view) => view.column === column)?.meaning;
  if (!meaning) return {};
  const implied: Record<string, string> = {};
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  const currency = CURRENCIES[meaning.unit] ?? "";
  if (currency !== "" && !has("currency")) implied.currency = currency;
  if (meaning.says.split(" ").includes("box") && !has("pricePer")) implied.pricePer = "box";
  return implied;
}
