import type { ColumnView } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

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
/** Columns that make one beside a price or a time of delivery. */
const OF_A_SUPPLIER: ReadonlySet<string> = new Set(["supplier", "currency"]);
/** Currencies as the header of prices names them. */
const CURRENCIES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(["EUR", "USD", "GBP", "CHF", "CAD", "AUD", "NZD"].map((code) => [code.toLowerCase(), code])),
  "€": "EUR",
  "£": "GBP",
};
/** True where columns make a price list, which often leaves an item's kind to its name. */
export function isPriceList(fields: readonly FieldSource[]): boolean {
  const named = fields.map(({ spec }) => spec.field);
  const said = named.filter((field) => PRICE_LIST.has(field));
  const ofSupplier = named.filter((field) => OF_A_SUPPLIER.has(field));
  return said.length >= 2 || (ofSupplier.length > 0 && said.some((field) => field === "price" || field === "leadDays"));
}

/** What the header of the prices says of them: "Price per box (EUR)". */
export function impliedByPrice(fields: readonly FieldSource[], views: readonly ColumnView[]): Record<string, string> {
  const column = fields.find(({ spec }) => spec.field === "price")?.columns[0];
  const { meaning, name = "" } = views.find((view) => view.column === column) ?? {};
  if (!meaning) return {};
  const implied: Record<string, string> = {};
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  const currency = CURRENCIES[meaning.unit] ?? CURRENCIES[/[€£]/.exec(name)?.[0] ?? ""] ?? "";
  if (currency !== "" && !has("currency")) implied.currency = currency;
  if (meaning.says.split(" ").includes("box") && !has("pricePer")) implied.pricePer = "box";
  return implied;
}
