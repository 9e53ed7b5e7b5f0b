import { isoFromDay } from "../calendar/day.ts";
import { monthOfDay, monthText } from "../calendar/month.ts";
import { exactText, shareOut } from "../fleet/money.ts";
import type { Policy } from "../fleet/policy.ts";
import type { ItemCase } from "./item-case.ts";
import type { Offer } from "./offers.ts";
import { needDay } from "./order-slots.ts";
import type { ItemLots, PlacedLot } from "./plan-item.ts";
import { lineCostOf, orderFeeOf, unitPriceAt } from "./prices.ts";
import { reasonFor } from "./reason.ts";
import { sizeRisk } from "./size-risk.ts";
import type { OrderLine } from "./types.ts";
import { unitsBought } from "./units-bought.ts";

/** An order line with what it was planned from. */
export interface PlannedLine {
  line: OrderLine;
  offer: Offer;
  lot: PlacedLot;
  /** Month indices, inclusive. */
  covers: { from: number; to: number };
  /** Units more than the months covered lack in whole boxes, or fewer (below 0), for the sake of price or fee. */
  beyond: number;
  /** Month index of the order day. */
  orderMonth: number;
}

/** The lots of one item as order lines, without their share of fees. */
export function linesOfItem(of: ItemCase, planned: ItemLots, policy: Policy): PlannedLine[] {
  const used = new Set<string>();
  return planned.lots.map((lot, index) => {
    const { offer, slots } = of.offers[lot.source]!;
    const { slot } = lot;
    const covers = coveredMonths(lot, planned.cumulativeNeed, slot.lastServed);
    const late = slots[covers.from]!.missed && lot.period === 0;
    const uncovered = late && slot.arriveBy > needDay(policy, of.demand.from, covers.from);
    const from = of.demand.from + covers.from;
    const base = `${offer.supplier}|${of.item}|${monthText(from)}`;
    let id = base;
    for (let copy = 2; used.has(id); copy++) id = `${base}|${copy}`;
    used.add(id);
    const line: OrderLine = {
      id,
      order: `${offer.supplier}|${isoFromDay(slot.orderBy)}`,
      orderBy: slot.orderBy,
      arriveBy: slot.arriveBy,
      late,
      uncoveredUntil: uncovered ? slot.arriveBy - 1 : null,
      supplier: offer.supplier,
      item: of.item,
      gtin: offer.gtin,
      quantity: lot.units,
      boxes: lot.units / offer.unitsPerBox,
      unitPrice: exactText(unitPriceAt(offer, policy, slot.orderBy, lot.units), offer.currency),
      lineCost: lineCostOf(offer, policy, slot.orderBy, lot.units),
      feeShare: 0,
      currency: offer.currency,
      covers: { from, to: of.demand.from + covers.to },
      reason: "",
      expectedWaste: lot.lapsing,
    };
    const waiting = slots.filter((_, month) => needDay(policy, of.demand.from, month) < slot.arriveBy).length - 1;
    line.reason = reasonFor(line, {
      offer,
      level: of.level,
      offCadence: slot.offCadence,
      tooLate: of.supply.reduce((sum, { from: comes, units }) => {
        return comes > covers.from && comes <= covers.to ? sum + units : sum;
      }, 0),
      risk: sizeRisk(of, lot, planned.lots.slice(0, index), covers.to, policy),
      missing: uncovered ? planned.cumulativeNeed[Math.min(waiting, covers.to)]! - lot.coveredBefore : 0,
      stopgaps: uncovered ? of.stopgapsUntil(slot.arriveBy) : [],
    });
    const lacking = planned.cumulativeNeed[covers.to]! - lot.coveredBefore;
    const beyond = lot.units - unitsBought(offer, lacking);
    return { line, offer, lot, covers, beyond, orderMonth: monthOfDay(slot.orderBy) - of.demand.from };
  });
}

/** Puts each order's one fee on its lines, by their cost, to the minor unit. */
export function shareFees(planned: readonly PlannedLine[]): void {
  const orders = new Map<string, PlannedLine[]>();
  for (const one of planned) {
    const key = `${one.line.order}|${one.line.currency}`;
    orders.set(key, [...(orders.get(key) ?? []), one]);
  }
  for (const lines of orders.values()) {
    const costs = lines.map(({ line }) => line.lineCost);
    const fee = orderFeeOf(
      lines[0]!.offer,
      costs.reduce((a, b) => a + b, 0),
    );
    shareOut(fee, costs).forEach((share, index) => {
      lines[index]!.line.feeShare = share;
    });
  }
}

/** From the first month that the lots before do not cover, to the last that this lot covers whole, within its life. */
function coveredMonths(
  lot: PlacedLot,
  cumulativeNeed: readonly number[],
  lastServed: number,
): { from: number; to: number } {
  const from = cumulativeNeed.findIndex((need) => need > lot.coveredBefore);
  let to = from;
  while (to < lastServed && cumulativeNeed[to + 1]! <= lot.coveredAfter) to++;
  return { from, to };
}
