import type { Month } from "../calendar/month.ts";
import { convolve, quantileOfCounts } from "../maths/convolution.ts";
import type { SpanNeeds } from "./span-needs.ts";
import { DEMAND_CAUSES, type DemandCause, type ItemDemand } from "./types.ts";

/** What an item's demand is made of. */
export interface DemandParts {
  item: string;
  from: Month;
  months: number;
  draws: number;
  /** Units that are needed for certain, by month. */
  certain: Int32Array;
  /** Random parts, independent of one another. */
  random: readonly SpanNeeds[];
  causes: Partial<Record<DemandCause, Float64Array>>;
}

/** Puts an item's demand together: certain needs, plus the sum of independent random parts. */
export function itemDemand(parts: DemandParts): ItemDemand {
  const { item, from, months, draws, certain, random } = parts;
  const none = new Float64Array(months);
  const causes = Object.fromEntries(
    DEMAND_CAUSES.map((cause) => [cause, parts.causes[cause] ?? none.slice()]),
  ) as Record<DemandCause, Float64Array>;
  const mean = none.map((_, m) => DEMAND_CAUSES.reduce((sum, cause) => sum + causes[cause][m]!, 0));
  const countsBySpan = new Map<number, Float64Array>();
  const quantilesAt = new Map<number, Map<number, number>>();
  const countsIn = (after: number, through: number) => {
    const key = (after + 1) * months + through;
    let counts = countsBySpan.get(key);
    if (!counts) {
      counts = random.reduce<Float64Array>(
        (sum, part) => convolve(sum, part.countsIn(after, through)),
        Float64Array.of(1),
      );
      countsBySpan.set(key, counts);
    }
    return counts;
  };
  const randomQuantile = (after: number, through: number, level: number) => {
    if (random.length === 0) return 0;
    const quick = random.length === 1 ? random[0]!.quantileIn(after, through, level) : null;
    return quick ?? quantileOfCounts(countsIn(after, through), level);
  };
  return {
    item,
    from,
    months,
    mean,
    causes,
    draws,
    needsQuantile(after, through, level) {
      if (through <= after) return 0;
      let quantiles = quantilesAt.get(level);
      if (!quantiles) {
        quantiles = new Map();
        quantilesAt.set(level, quantiles);
      }
      const key = (after + 1) * months + through;
      let quantile = quantiles.get(key);
      if (quantile === undefined) {
        let known = 0;
        for (let m = after + 1; m <= through; m++) known += certain[m]!;
        quantile = known + randomQuantile(after, through, level);
        quantiles.set(key, quantile);
      }
      return quantile;
    },
    samplePath(draw, next) {
      const path = certain.slice();
      for (const part of random) part.addPath(draw, next, path);
      return path;
    },
  };
}
