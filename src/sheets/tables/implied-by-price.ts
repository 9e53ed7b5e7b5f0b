import type { ColumnView } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

/** Currencies as the header of prices names them. */
const CURRENCIES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(["EUR", "USD", "GBP", "CHF", "CAD", "AUD", "NZD"].map((code) => [code.toLowerCase(), code])),
  "€": "EUR",
  "£": "GBP",
};

/** The currency that stands beside an amount ("€ 2.80", "30 CHF"); null where none does that is one country's. */
export function currencyIn(amount: string): string | null {
  return CURRENCIES[/[€£]|\b[a-z]{3}\b/.exec(amount.toLowerCase())?.[0] ?? ""] ?? null;
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
