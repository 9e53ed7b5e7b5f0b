import type { Plan } from "../src/index.ts";
import { dayNumber } from "./months.ts";

/** What the plan is least sure of, counted. */
export interface LeastCertain {
  packs: number;
  /** Packs with a forecast, but without readings of their own. */
  typical: number;
  noForecast: number;
  /** Packs whose early date lies within the plan, and whose late date more than a year after it. */
  wide: number;
}

/** Early and late dates that lie further apart, in days, are told as wide. */
const WIDE = 365;

const hasForecast = ({ replaceBy }: Plan["packs"][number]) => replaceBy.kind !== "no-forecast";

export function leastCertain(plan: Plan): LeastCertain {
  const wide = plan.packs.filter(({ replaceBy: { p10, p90 } }) => {
    if (p10 === null || p10.slice(0, 7) > plan.horizon.to) return false;
    return p90 === null || dayNumber(p90) - dayNumber(p10) > WIDE;
  });
  return {
    packs: plan.packs.length,
    typical: plan.packs.filter((pack) => pack.basis === "typical" && hasForecast(pack)).length,
    noForecast: plan.packs.filter((pack) => !hasForecast(pack)).length,
    wide: wide.length,
  };
}
