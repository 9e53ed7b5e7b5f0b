import type { CatalogueRow } from "./rows.ts";

/** A row of the catalogue that says nothing but the item: what is known of an item that no catalogue lists. */
export function blankCatalogueRow(item: string): CatalogueRow {
  return {
    item,
    kind: "other",
    gtin: null,
    chemistry: null,
    supplier: null,
    price: null,
    pricePer: null,
    currency: null,
    unitsPerBox: null,
    minimumOrder: null,
    priceBreaks: [],
    leadDays: null,
    leadSdDays: null,
    shelfMonths: null,
    arrivesWithMonths: null,
    serviceMonths: null,
    maxCycles: null,
    ratedWh: null,
    ratedAh: null,
    ratedMinutes: null,
    openedDays: null,
    unitLengthM: null,
    perDevice: null,
    fits: [],
    carriedBy: [],
    alternatives: [],
    replacedBy: null,
    serviceLevel: null,
    source: { file: "", sheet: null, line: 0 },
  };
}
