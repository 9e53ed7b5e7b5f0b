import type { Plan } from "./plan-schema.ts";

type Year = Plan["budget"][number];

/** Whether anything of a year's spend, or of an item's, has a price or a fee. */
export function hasPrices({ planned, p50, p80, p95 }: Omit<Year["byItem"][number], "item">): boolean {
  return Math.max(planned, p50, p80, p95) > 0;
}

/** Whether it is known what a year takes: it has prices, or nothing is ordered in it. */
export function isSpendKnown(year: Year): boolean {
  return hasPrices(year) || year.byItem.length === 0;
}
