import type { Day } from "../calendar/day.ts";
import { exactFromText, minorUnits, numberFromExact } from "../fleet/money.ts";
import type { Policy } from "../fleet/policy.ts";
import type { LotTier } from "./lot-problem.ts";
import type { Offer } from "./offers.ts";
import { orderFeeOf, unitPriceAt, wholeYears } from "./prices.ts";

/** What else is bought from the same supplier on the same day: whole minor units, before the fee. */
export interface OrderedBeside {
  lines: number;
  total: number;
}

interface PriceStep {
  fromUnits: number;
  unitCost: number;
}

/**
 * Where nothing is known of the price, or holding costs nothing, of plans that cost the same the one that buys latest is
 * meant: holding costs next to nothing then, in minor units a unit and period.
 */
const LEAST_HOLDING = 1e-7;

/** The cost tiers of a lot ordered on a day, in minor units, beside what else is ordered that day. */
export type LotTiers = (orderBy: Day, beside: OrderedBeside) => LotTier[];

/**
 * How an offer's lots are priced for lot sizing: all-units prices, what the order's fee becomes with this line beside
 * the others (a line can lift the order over `free_over` and save the fee), and holding. Holding is charged at today's
 * price for a single unit: the holding rate and, for what leaves by expiry, the life lost on the shelf.
 */
export function lotTiersOf(offer: Offer, policy: Policy): LotTiers {
  const scale = minorUnits(exactFromText("1"), offer.currency);
  const priceAt = (orderBy: Day, units: number) => numberFromExact(unitPriceAt(offer, policy, orderBy, units)) * scale;
  const lifeLost = offer.leavesByExpiry && offer.lifeMonths ? 1 / offer.lifeMonths : 0;
  const holdingCost = Math.max(LEAST_HOLDING, priceAt(policy.asOf, 1) * (policy.holdingRatePerYear / 12 + lifeLost));
  const fromUnits = [...new Set(offer.prices.map((tier) => Math.max(tier.fromUnits, offer.minimumUnits)))];
  const byYear: PriceStep[][] = [];
  const byDay = new Map<Day, PriceStep[]>();
  const stepsOn = (orderBy: Day) => {
    let steps = byDay.get(orderBy);
    if (!steps) {
      const years = wholeYears(policy, orderBy);
      byYear[years] ??= fromUnits.map((from) => ({ fromUnits: from, unitCost: priceAt(orderBy, from) }));
      steps = byYear[years];
      byDay.set(orderBy, steps);
    }
    return steps;
  };
  return (orderBy, beside) => {
    const feeBefore = beside.lines > 0 ? orderFeeOf(offer, beside.total) : 0;
    const missing = offer.freeOver === null || offer.fee === 0 ? null : offer.freeOver - beside.total;
    const tiers: LotTier[] = [];
    const steps = stepsOn(orderBy);
    steps.forEach(({ fromUnits, unitCost }, rank) => {
      const below = steps[rank + 1]?.fromUnits ?? Number.POSITIVE_INFINITY;
      const add = (from: number) => {
        const fee = orderFeeOf(offer, beside.total + Math.floor(from * unitCost + 0.5));
        tiers.push({ fromUnits: from, unitCost, lotCost: fee - feeBefore, holdingCost });
      };
      add(fromUnits);
      // half a minor unit less, since the line is rounded half up; the tolerance is for the division alone
      const lifting = missing === null ? 0 : Math.ceil((missing - 0.5) / unitCost - 1e-9);
      if (unitCost > 0 && lifting > fromUnits && lifting < below) add(lifting);
    });
    return tiers;
  };
}
