import { nameKey } from "../../fleet/name-key.ts";
import type { Entry, TableState } from "../rows/entry.ts";

/** Gives rows whose item came from a label the catalogue's name for that product, where the catalogue knows it. */
export function nameProducts(labelled: TableState["labelled"], catalogue: readonly Entry[]): void {
  if (labelled.length === 0) return;
  const names = new Map<string, string>();
  for (const { values } of catalogue) {
    if (typeof values.gtin === "string") names.set(productKey(values.gtin), String(values.item));
  }
  for (const { entry, product } of labelled) entry.values.item = names.get(productKey(product)) ?? product;
}

/** GTINs of 8, 12 and 13 digits are the same as with leading zeros up to 14. */
function productKey(product: string): string {
  const digits = product.replace(/[\s-]/g, "");
  return /^\d{8,14}$/.test(digits) ? digits.padStart(14, "0") : nameKey(product);
}
