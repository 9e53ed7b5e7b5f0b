import type { Month } from "../calendar/month.ts";

export const DEMAND_CAUSES = ["fade", "limit", "failure", "expiry", "use", "routine", "growth"] as const;
export type DemandCause = (typeof DEMAND_CAUSES)[number];

/**
 * Units of an item needed month by month, gross (before stock), renewals included, as a distribution.
 * Month index 0 is as-of's month; needs already overdue fall in it.
 */
export interface ItemDemand {
  item: string;
  from: Month;
  months: number;
  /** Expected units by month. */
  mean: Float64Array;
  /** Expected units by month and cause; they add up to `mean`. */
  causes: Record<DemandCause, Float64Array>;
  /**
   * Smallest n such that needs in months after+1 .. through (indices, after >= -1) are <= n with chance >= level.
   * Draws are mixed, never averaged first.
   */
  needsQuantile(after: number, through: number, level: number): number;
  draws: number;
  /** One possible future: units needed in each month, given the draw. `random` gives numbers in [0, 1). */
  samplePath(draw: number, random: () => number): Int32Array;
}
