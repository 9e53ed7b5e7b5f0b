import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { assign } from "./assign.ts";
import { fieldSource, sharedField } from "./field-source.ts";
import type { FormAbove } from "./form-lines.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

/** What a list of stock or packs may say of its items besides: whom to buy them from, for how much, how soon. */
const OF_THE_ITEM: ReadonlySet<string> = new Set([
  "gtin",
  "chemistry",
  "supplier",
  "price",
  "currency",
  "minimumOrder",
  "leadDays",
  "leadSdDays",
  "shelfMonths",
  "arrivesWithMonths",
  "openedDays",
]);
/** The same of packs alone. */
const OF_A_PACK: ReadonlySet<string> = new Set(["serviceMonths", "maxCycles", "ratedWh", "ratedAh", "ratedMinutes"]);
/** The least points: what the columns are not there for must be named outright. */
const NAMED = 4.5;
/** A sum over the row's units is no price of one. */
export const IS_SUM =
  /total|value|sum|amount|wert|gesamt|summe|betrag|valeur|montant|valor|importe|waarde|bedrag|totaal/i;

/** What a list says of its items besides, in columns of its own or in a form above it; null where it says nothing. */
export function listBeside(outputs: readonly Output[], views: readonly ColumnView[], form: FormAbove): Output | null {
  return (
    catalogueBeside(outputs, views) ??
    stockBeside(outputs, views) ??
    ratingBeside(outputs, views) ??
    ratingAbove(outputs, form)
  );
}

/**
 * The catalogue that a list of packs or of dated stock holds in columns of its own; null where it holds none. Its rows
 * stand once a line and not once an item, and a catalogue proper goes before them.
 */
function catalogueBeside(outputs: readonly Output[], views: readonly ColumnView[]): Output | null {
  const main = outputs.find(({ sheet: { kind } }) => kind === "packs" || kind === "dated_stock");
  const others = outputs.filter((output) => output !== main);
  // the price in a register of devices may be the device's, and two kinds of unit in a line have two prices
  if (!main || others.some(({ sheet: { kind } }) => kind !== "runtime_tests")) return null;
  const item = main.fields.find(({ spec }) => spec.field === "item");
  if (!item) return null;
  const sheet = sheetSpec("catalogue");
  const isPack = main.sheet.kind === "packs";
  const used = new Set(outputs.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns)));
  const rest = views.filter(({ column, name }) => !used.has(column) && !IS_SUM.test(name));
  const fields = assign(sheet, rest).filter(({ points }) => points >= NAMED);
  return besideOutput(sharedField(item, sheet, "item"), fields, isPack);
}

/** What a list of stock says of units on their way ("On order", "ETA"), once for each item; null where it says nothing. */
export function orderBeside(outputs: readonly Output[], views: readonly ColumnView[]): Output | null {
  const main = outputs[0];
  // several lots of a line are all of its item
  const items = outputs.map(({ fields }) => fields.find(({ spec }) => spec.field === "item"));
  const [item] = items;
  if (main?.sheet.kind !== "dated_stock" || !item || items.some((other) => other?.columns[0] !== item.columns[0]))
    return null;
  const sheet = sheetSpec("on_order");
  const used = new Set(main.fields.flatMap(({ columns }) => columns));
  const rest = views.filter(({ column }) => !used.has(column));
  const amount = rest.find(({ meaning }) => meaning.says.includes("outstanding"));
  if (!amount) return null;
  const fields = assign(
    sheet,
    rest.filter((view) => view !== amount),
  ).filter(({ spec, points }) => /^(arrives|order|supplier)$/.test(spec.field) && points >= NAMED);
  const quantity = fieldSource(columnOfField(sheet, "quantity"), amount, 6);
  // an order without a number of its own goes by the head of its column, so that lines of one item tell it once
  const order = fields.some(({ spec }) => spec.field === "order") ? {} : { order: amount.name.trim() };
  return {
    sheet,
    fields: [sharedField(item, sheet, "item"), quantity, ...fields],
    implied: order,
    own: [amount.column],
  };
}

/** What rates the tests of a line that names no item: "Rated Ah" beside "Ah"; null where nothing does. */
function ratingBeside(outputs: readonly Output[], views: readonly ColumnView[]): Output | null {
  const all = outputs.flatMap(({ fields }) => fields);
  const isTests = outputs.some(({ sheet }) => sheet.kind === "runtime_tests");
  if (!isTests || all.some(({ spec }) => spec.field === "item")) return null;
  const used = new Set(all.flatMap(({ columns }) => columns));
  const sheet = sheetSpec("catalogue");
  const fields = assign(
    sheet,
    views.filter(({ column }) => !used.has(column)),
  ).filter(({ points }) => points >= NAMED);
  return ratingOutput(fields);
}

/** What rates a log's tests, where the form above it gives the rating; null where it gives none. */
function ratingAbove(outputs: readonly Output[], form: FormAbove): Output | null {
  const implied = Object.fromEntries(Object.entries(form).filter(([name]) => name.startsWith("rated")));
  const tests = outputs.find(({ sheet }) => sheet.kind === "runtime_tests");
  return tests === undefined || Object.keys(implied).length === 0
    ? null
    : { sheet: sheetSpec("catalogue"), fields: [], implied, own: tests.own, beside: true, rates: true };
}

/** The rows that rate the tests of their lines, from the columns that may hold a rating; null where none does. */
export function ratingOutput(said: readonly FieldSource[]): Output | null {
  const fields = said.filter(({ spec: { field } }) => field.startsWith("rated"));
  const own = fields.flatMap(({ columns }) => columns);
  return own.length === 0
    ? null
    : { sheet: sheetSpec("catalogue"), fields, implied: {}, own, beside: true, rates: true };
}

/** The catalogue of a list's items from the columns that may say something of them; null where none does. */
export function besideOutput(item: FieldSource, said: readonly FieldSource[], isPack: boolean): Output | null {
  const fields = said.filter(({ spec: { field } }) => OF_THE_ITEM.has(field) || (isPack && OF_A_PACK.has(field)));
  if (fields.length === 0) return null;
  return {
    sheet: sheetSpec("catalogue"),
    fields: [item, ...fields],
    implied: isPack ? { kind: "pack" } : {},
    own: fields.flatMap(({ columns }) => columns),
    beside: true,
  };
}

/** The stock that a price list counts, each item with one expiry; null where it counts none. */
function stockBeside(outputs: readonly Output[], views: readonly ColumnView[]): Output | null {
  const [main, ...others] = outputs;
  const item = main?.fields.find(({ spec }) => spec.field === "item");
  if (main?.sheet.kind !== "catalogue" || others.length > 0 || !item) return null;
  const sheet = sheetSpec("dated_stock");
  const used = new Set(main.fields.flatMap(({ columns }) => columns));
  const fields = assign(
    sheet,
    views.filter(({ column }) => !used.has(column)),
  ).filter(({ points }) => points >= NAMED);
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  if (!has("expiry") || !has("quantity")) return null;
  return {
    sheet,
    fields: [sharedField(item, sheet, "item"), ...fields],
    implied: {},
    own: fields.filter(({ spec }) => spec.field === "expiry").flatMap(({ columns }) => columns),
  };
}
