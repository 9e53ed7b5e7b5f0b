import { currencyCode } from "../../fleet/currency.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

/** Currencies that are known where they stand beside a price. */
const CODES = ["EUR", "USD", "GBP", "CHF", "CAD", "AUD", "NZD"];

/** The currency that stands beside an amount ("€ 2.80", "30 CHF"); null where none does that is one country's. */
export function currencyIn(amount: string): string | null {
  const code = currencyCode(/[€£]|\b[a-z]{3}\b/i.exec(amount)?.[0] ?? "");
  return CODES.includes(code) ? code : null;
}

/** What the header of the prices says of them: "Price per box (EUR)". */
export function impliedByPrice(fields: readonly FieldSource[], views: readonly ColumnView[]): Record<string, string> {
  const column = fields.find(({ spec }) => spec.field === "price")?.columns[0];
  const { meaning, name = "" } = views.find((view) => view.column === column) ?? {};
  if (!meaning) return {};
  const implied: Record<string, string> = {};
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  const currency = currencyIn(meaning.unit) ?? currencyIn(/[€£]/.exec(name)?.[0] ?? "");
  if (currency !== null && !has("currency")) implied.currency = currency;
  if (meaning.says.split(" ").includes("box") && !has("pricePer")) implied.pricePer = "box";
  return implied;
}
