import type { Policy } from "../fleet/policy.ts";
import type { ItemCase } from "./item-case.ts";
import type { PlacedLot } from "./plan-item.ts";
import { lineCostOf } from "./prices.ts";
import { missingThrough, type SupplySpan, stockToUse, useFirstExpired } from "./supply-spans.ts";
import { unitsBought } from "./units-bought.ts";

/** The service level that an order's size is compared with. */
const LOWER_LEVEL = 0.8;

/** What an order's size buys: how much smaller a lower service level would make it, and what may be left over. */
export interface SizeRisk {
  /** Boxes and minor units of money less at the lower level; null where nothing less, or the level is no higher. */
  lower: { level: number; boxes: number; saves: number } | null;
  /** Units expected to be left when the months covered are over, needs at their mean; includes spares. */
  expectedLeft: number;
}

/** Compares a lot with what its months would take at a lower service level, after the lots before it. */
export function sizeRisk(
  of: ItemCase,
  lot: PlacedLot,
  before: readonly PlacedLot[],
  coversTo: number,
  policy: Policy,
): SizeRisk {
  const { offer } = of.offers[lot.source]!;
  const spanOf = (one: PlacedLot): SupplySpan => ({ from: one.period, to: one.slot.lastServed, units: one.units });
  const supply = [...of.supply, ...before.map(spanOf)];
  const enoughAt = (level: number) => {
    const missing = missingThrough(coversTo, -1, supply, (after, through) => of.net.needsAt(after, through, level));
    return missing > 0 ? unitsBought(offer, missing) : 0;
  };
  // what is bought beyond that, for the sake of a price or a fee, is bought at any level
  const fewer = Math.min(lot.units, enoughAt(of.level) - enoughAt(LOWER_LEVEL));
  const cost = (units: number) => (units === 0 ? 0 : lineCostOf(offer, policy, lot.slot.orderBy, units));
  const saves = cost(lot.units) - cost(lot.units - fewer);
  return {
    lower: fewer > 0 ? { level: LOWER_LEVEL, boxes: fewer / offer.unitsPerBox, saves } : null,
    expectedLeft: expectedLeft(of, [...supply, spanOf(lot)], coversTo),
  };
}

/** Stock after a month when every month takes its mean, first expired, first out. */
function expectedLeft(of: ItemCase, supply: readonly SupplySpan[], through: number): number {
  const left = stockToUse(supply);
  let waiting = 0;
  for (let month = 0; month <= through; month++) {
    waiting = useFirstExpired(left, month, waiting + of.demand.mean[month]!);
  }
  // what lasts to the last month is not known to lapse after it
  const lasts = (span: SupplySpan) => span.from <= through && (span.to > through || span.to === of.demand.months - 1);
  return left.reduce((sum, span) => sum + (lasts(span) ? span.units : 0), 0);
}
