import { addMonths, type Day } from "../calendar/day.ts";
import { type Exact, exactFromText, minorUnits, numberFromExact, timesExact } from "../fleet/money.ts";
import type { Policy } from "../fleet/policy.ts";
import type { LotTier } from "./lot-problem.ts";
import type { Offer } from "./offers.ts";

/** What else is bought from the same supplier on the same day: whole minor units, before the fee. */
export interface OrderedBeside {
  lines: number;
  total: number;
}

const ALONE: OrderedBeside = { lines: 0, total: 0 };

/**
 * The exact price of one unit for an order of a size on a day. Prices rise by the policy's rate once a year, on
 * as-of's anniversaries, so that every price is an exact decimal.
 */
export function unitPriceAt(offer: Offer, policy: Policy, orderBy: Day, units: number): Exact {
  const step = offer.prices.filter((tier) => tier.fromUnits <= units).at(-1) ?? offer.prices[0]!;
  return timesExact(step.price, priceRise(policy, orderBy));
}

/** The cost of a line in whole minor units, rounded once, half up. */
export function lineCostOf(offer: Offer, policy: Policy, orderBy: Day, units: number): number {
  return minorUnits(timesExact(unitPriceAt(offer, policy, orderBy, units), units), offer.currency);
}

/** The fee of an order of the given total before the fee, in whole minor units. */
export function orderFeeOf(offer: Offer, total: number): number {
  if (offer.fee === null) return 0;
  if (offer.freeOver !== null && total >= minorUnits(offer.freeOver, offer.currency)) return 0;
  return minorUnits(offer.fee, offer.currency);
}

/**
 * The cost tiers of a lot ordered on a day, in minor units: all-units prices, what the order's fee becomes with this
 * line beside the others (a line can lift the order over `free_over` and save the fee), and holding: the price times
 * the holding rate and, for what leaves by expiry, the life lost on the shelf.
 */
export function lotTiers(offer: Offer, policy: Policy, orderBy: Day, beside = ALONE): LotTier[] {
  const scale = numberFromExact(timesExact(minorScale(offer.currency), 1));
  const feeBefore = beside.lines > 0 ? orderFeeOf(offer, beside.total) : 0;
  const starts = new Set(offer.prices.map((tier) => Math.max(tier.fromUnits, offer.minimumUnits)));
  const free = offer.freeOver === null ? null : minorUnits(offer.freeOver, offer.currency) - beside.total;
  if (free !== null) {
    offer.prices.forEach((tier, rank) => {
      const first = Math.max(tier.fromUnits, offer.minimumUnits);
      const below = offer.prices[rank + 1]?.fromUnits ?? Number.POSITIVE_INFINITY;
      const price = numberFromExact(unitPriceAt(offer, policy, orderBy, first)) * scale;
      if (first >= below || price <= 0) return;
      const reach = leastUnitsWorth(free, price, (units) => lineCostOf(offer, policy, orderBy, units));
      if (reach > first && reach < below) starts.add(reach);
    });
  }
  return [...starts]
    .sort((a, b) => a - b)
    .map((fromUnits) => {
      const unitCost = numberFromExact(unitPriceAt(offer, policy, orderBy, fromUnits)) * scale;
      const fee = orderFeeOf(offer, beside.total + lineCostOf(offer, policy, orderBy, fromUnits));
      return { fromUnits, unitCost, lotCost: fee - feeBefore, holdingCost: unitCost * holdingShare(offer, policy) };
    });
}

/** Share of its price that a unit on the shelf costs a month. */
function holdingShare(offer: Offer, policy: Policy): number {
  const lifeLost = offer.leavesByExpiry && offer.lifeMonths ? 1 / offer.lifeMonths : 0;
  return policy.holdingRatePerYear / 12 + lifeLost;
}

function priceRise(policy: Policy, orderBy: Day): Exact {
  let rise = exactFromText("1");
  if (policy.priceRisePerYear === 0) return rise;
  const { numerator, denominator } = exactFromText(String(policy.priceRisePerYear));
  const yearly = { numerator: numerator + denominator, denominator };
  for (let years = 1; addMonths(policy.asOf, 12 * years) <= orderBy; years++) rise = timesExact(rise, yearly);
  return rise;
}

/** Minor units in one major unit. */
function minorScale(currency: string): Exact {
  return { numerator: BigInt(minorUnits(exactFromText("1"), currency)), denominator: 1n };
}

/** Least number of units whose cost reaches an amount; the estimate by price is set right for rounding. */
function leastUnitsWorth(amount: number, price: number, costOf: (units: number) => number): number {
  let units = Math.max(1, Math.ceil(amount / price) - 1);
  while (costOf(units) < amount) units++;
  return units;
}
