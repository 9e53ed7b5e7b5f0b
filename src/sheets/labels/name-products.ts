import { nameKey } from "../../fleet/rows.ts";
import type { Entry } from "../rows/entry.ts";

/** Gives rows whose item came from a label the catalogue's name for that product, where the catalogue knows it. */
export function nameProducts(byKind: ReadonlyMap<string, Entry[]>): void {
  const scanned: Entry[] = [];
  for (const entry of byKind.get("dated_stock") ?? []) if (entry.product !== null) scanned.push(entry);
  if (scanned.length === 0) return;
  const names = new Map<string, string>();
  for (const { values } of byKind.get("catalogue") ?? []) {
    if (typeof values.gtin === "string") names.set(productKey(values.gtin), String(values.item));
  }
  for (const entry of scanned) entry.values.item = names.get(productKey(entry.product as string)) ?? entry.product;
}

/** GTINs of 8, 12 and 13 digits are the same as with leading zeros up to 14. */
function productKey(product: string): string {
  const digits = product.replace(/[\s-]/g, "");
  return /^\d{8,14}$/.test(digits) ? digits.padStart(14, "0") : nameKey(product);
}
