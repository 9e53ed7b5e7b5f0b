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

/** True where columns make a price list, which often leaves an item's kind to its name. */
export function isPriceList(fields: readonly FieldSource[]): boolean {
  const named = fields.map(({ spec }) => spec.field);
  const said = named.filter((field) => PRICE_LIST.has(field));
  const ofSupplier = named.filter((field) => OF_A_SUPPLIER.has(field));
  const [price] = fields.filter(({ spec, points }) => spec.field === "price" && points > 5);
  return (
    said.length >= 2 ||
    price !== undefined ||
    (ofSupplier.length > 0 && said.some((field) => field === "price" || field === "leadDays"))
  );
}
