import type { Day } from "../calendar/day.ts";

/** Tenth, fiftieth and ninetieth percentile of a date; null = never, or later than 30 years from as-of. */
export interface DateBand {
  p10: Day | null;
  p50: Day | null;
  p90: Day | null;
}

/** Tenth, fiftieth and ninetieth percentile of a capacity, as a fraction of rated. */
export interface CapacityBand {
  p10: number;
  p50: number;
  p90: number;
}

/**
 * Where a forecast date falls: due at as-of, inside the plan's months, after them, or no forecast at all.
 */
export type ForecastKind = "already-due" | "within-horizon" | "beyond-horizon" | "no-forecast";

/** What a forecast rests on: the pack's own readings, few readings and the fleet's curve, or priors only. */
export type Basis = "measured" | "pooled" | "typical";

/** One item's shared fade, for the record. */
export interface FadeGroup {
  item: string;
  packs: number;
  readings: number;
  completedLives: number;
  /** Medians over the curves, by name; rounded when written out. */
  parameters: Record<string, number>;
  basis: Basis;
}
