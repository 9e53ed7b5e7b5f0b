import { addMonths, type Day } from "../calendar/day.ts";
import { type Exact, exactFromText, minorUnits, timesExact } from "../fleet/money.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Offer } from "./offers.ts";

/**
 * The exact price of one unit for an order of a size on a day. Prices rise by the policy's rate once a year, on
 * as-of's anniversaries, so that every price is an exact decimal.
 */
export function unitPriceAt(offer: Offer, policy: Policy, orderBy: Day, units: number): Exact {
  const step = offer.prices.filter((tier) => tier.fromUnits <= units).at(-1) ?? offer.prices[0]!;
  let price = step.price;
  if (policy.priceRisePerYear === 0) return price;
  const { numerator, denominator } = exactFromText(String(policy.priceRisePerYear));
  const yearly = { numerator: numerator + denominator, denominator };
  for (let years = wholeYears(policy, orderBy); years > 0; years--) price = timesExact(price, yearly);
  return price;
}

/** The cost of a line in whole minor units, rounded once, half up. */
export function lineCostOf(offer: Offer, policy: Policy, orderBy: Day, units: number): number {
  return minorUnits(timesExact(unitPriceAt(offer, policy, orderBy, units), units), offer.currency);
}

/** The fee of an order of the given total before the fee, in whole minor units. */
export function orderFeeOf(offer: Offer, total: number): number {
  return offer.freeOver !== null && total >= offer.freeOver ? 0 : offer.fee;
}

/** Whole years from as-of to a day. */
export function wholeYears({ asOf }: Policy, day: Day): number {
  let years = 0;
  while (addMonths(asOf, 12 * (years + 1)) <= day) years++;
  return years;
}
