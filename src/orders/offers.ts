import { blankCatalogueRow } from "../fleet/blank-catalogue-row.ts";
import { currencyWords, NO_CURRENCY } from "../fleet/currency.ts";
import { listed } from "../fleet/listed.ts";
import { dividedExact, type Exact, exactFromText, minorUnits } from "../fleet/money.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { CatalogueRow, Fleet, ItemKind, SupplierRow } from "../fleet/rows.ts";
import { normalQuantile } from "../maths/normal.ts";
import type { ItemCaution } from "./item-cautions.ts";

/** Shown where a catalogue names no supplier, and for items that it does not hold. */
const UNNAMED_SUPPLIER = "unnamed supplier";

/** What is done where a lead time is not known. */
const AT_ONCE = "planned to arrive on the day they leave.";

/** One item as one supplier sells it, with what an order needs to know. Days and months are whole. */
export interface Offer {
  supplier: string;
  /** The supplier and the currency: what is ordered on one day of one account shares a fee. */
  account: string;
  item: string;
  kind: ItemKind;
  /** The supplier's trade item number as the catalogue has it, null where it names none. */
  gtin: string | null;
  currency: string;
  unitsPerBox: number;
  minimumUnits: number;
  /** All-units prices of one unit, by order size, first from 0; exact. */
  prices: { fromUnits: number; price: Exact }[];
  priced: boolean;
  /** Expected days from order to arrival; 0 where they are not known. */
  leadDays: number;
  leadKnown: boolean;
  /** The lead time planned with: its service-level quantile where its spread is known. */
  planLeadDays: number;
  /** Months of life on arrival, null where it does not lapse. */
  lifeMonths: number | null;
  /** Days before the end of its life from which a unit is no longer fitted. */
  minLifeDays: number;
  /** Whether units in use leave by expiry, so that life lost on the shelf is money lost. */
  leavesByExpiry: boolean;
  orderEveryMonths: number | null;
  /** Fee an order, and the order total from which it falls away (null = never), in whole minor units. */
  fee: number;
  freeOver: number | null;
}

/**
 * The offers for an item, by supplier: those in one currency, and of these the priced ones if any is; an item that the
 * catalogue does not hold gets one offer without a price. Whatever had to be left out or assumed is a caution.
 *
 * @param item  the item as demand names it
 */
export function offersForItem(
  item: string,
  fleet: Fleet,
  policy: Policy,
  serviceLevel: number,
): { offers: Offer[]; cautions: ItemCaution[] } {
  const rows = fleet.catalogue.filter((row) => nameKey(row.item) === nameKey(item));
  if (rows.length === 0) {
    const lack = `have no price and no supplier, and are ${AT_ONCE}`;
    const one = `is not in the catalogue: its orders ${lack}`;
    const cautions = [{ item, one, many: `are not in the catalogue: their orders ${lack}` }];
    return { offers: [offerFromRow(blankCatalogueRow(item), undefined, policy, serviceLevel)], cautions };
  }
  const cautions: ItemCaution[] = [];
  const all = rows.map((row) => {
    const supplier = fleet.suppliers.find((one) => nameKey(one.supplier) === nameKey(row.supplier ?? ""));
    return offerFromRow(row, supplier, policy, serviceLevel);
  });
  all.sort((a, b) => (a.supplier < b.supplier ? -1 : a.supplier > b.supplier ? 1 : 0));
  const priced = all.some((offer) => offer.priced) ? all.filter((offer) => offer.priced) : all;
  if (!priced[0]!.priced) {
    const one = "has no price in the catalogue: its orders count as 0 in every total.";
    cautions.push({ item, one, many: "have no price in the catalogue: their orders count as 0 in every total." });
  }
  const currencies = [...new Set(priced.map((offer) => offer.currency))];
  const kept = currencies.find((currency) => currency === policy.currency) ?? currencies[0]!;
  if (currencies.length > 1) {
    const sold = `sold in ${listed(currencies.map(currencyWords))}, which cannot be compared: only ${currencyWords(kept)} is used.`;
    cautions.push({ item, one: `is ${sold}`, many: `are ${sold}` });
  }
  const offers = priced.filter((offer) => offer.currency === kept);
  for (const { supplier, currency } of offers) {
    const terms = fleet.suppliers.find((one) => nameKey(one.supplier) === nameKey(supplier));
    if (!terms?.orderFee || inCurrency(terms, currency)) continue;
    const fee = `bought from ${supplier} in ${currency}, whose order fee is in ${terms.currency}: it is not counted.`;
    cautions.push({ item, one: `is ${fee}`, many: `are ${fee}` });
  }
  if (rows.some((row) => row.pricePer === "box" && row.unitsPerBox === null && Number(row.price) > 0)) {
    const unsized = "priced by the box, and no units_per_box says what a box holds: each unit is counted as a box.";
    cautions.push({ item, one: `is ${unsized}`, many: `are ${unsized}` });
  }
  const at = offers.filter((offer) => !offer.leadKnown).map(({ supplier }) => supplier);
  if (at.length > 0) {
    const where = at.length < offers.length ? ` for ${listed(at)}` : "";
    const one = `no lead time${where} in the catalogue: orders${where && " there"} are ${AT_ONCE}`;
    cautions.push({ item, one: `has ${one}`, many: `have ${one}` });
  }
  return { offers, cautions };
}

function offerFromRow(row: CatalogueRow, supplier: SupplierRow | undefined, policy: Policy, level: number): Offer {
  const currency = row.currency ?? supplier?.currency ?? policy.currency ?? NO_CURRENCY;
  // however a row spells it, the supplier's fee is one
  const name = (supplier ?? row).supplier?.trim() || UNNAMED_SUPPLIER;
  const unitsPerBox = Math.max(1, row.unitsPerBox ?? 1);
  const perBox = row.pricePer === "box" ? unitsPerBox : 1;
  const breaks = [...row.priceBreaks].sort((a, b) => a.from - b.from);
  // nought is a price that nobody has filled in
  const base = [row.price, breaks[0]?.price].find((price) => Number(price) > 0);
  const leadDays = row.leadDays ?? 0;
  const spread = row.leadSdDays ?? 0;
  const leavesByExpiry = row.kind !== "pack";
  const money = (text: string | null | undefined) =>
    text && inCurrency(supplier, currency) ? minorUnits(exactFromText(text), currency) : null;
  return {
    supplier: name,
    account: `${name}|${currency}`,
    item: row.item,
    kind: row.kind,
    gtin: row.gtin?.trim() || null,
    currency,
    unitsPerBox,
    minimumUnits: Math.max(1, row.minimumOrder ?? 1),
    prices: [
      { fromUnits: 0, price: dividedExact(exactFromText(base ?? "0"), perBox) },
      ...breaks
        .filter((step) => step.from > 0)
        .map((step) => ({ fromUnits: step.from, price: dividedExact(exactFromText(step.price), perBox) })),
    ],
    priced: base !== undefined,
    leadDays,
    leadKnown: row.leadDays !== null,
    // never less than the expected lead time, so that a lead can only add safety
    planLeadDays: leadDays + Math.max(0, Math.ceil(normalQuantile(level) * spread)),
    lifeMonths: row.arrivesWithMonths ?? row.shelfMonths,
    minLifeDays: leavesByExpiry ? policy.minLifeDays : 0,
    leavesByExpiry,
    orderEveryMonths: supplier?.orderEveryMonths ?? null,
    fee: money(supplier?.orderFee) ?? 0,
    freeOver: money(supplier?.freeOver),
  };
}

/** Whether a supplier's fee is in a currency; one that names none charges in that of its prices. */
function inCurrency(supplier: SupplierRow | undefined, currency: string): boolean {
  return (supplier?.currency ?? currency) === currency;
}
