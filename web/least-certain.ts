import type { Plan } from "../src/index.ts";
import { dayNumber } from "./months.ts";

/** What the plan is least sure of, counted. */
export interface LeastCertain {
  packs: number;
  /** Packs with a forecast, but without readings of their own. */
  typical: number;
  noForecast: number;
  /** Packs due within the plan whose early and late dates lie more than a year apart. */
  wide: number;
}

/** Early and late dates that lie further apart, in days, are told as wide. */
const WIDE = 365;

const hasForecast = ({ replaceBy }: Plan["packs"][number]) => replaceBy.kind !== "no-forecast";

export function leastCertain(plan: Plan): LeastCertain {
  const wide = plan.packs.filter(({ replaceBy: { kind, p10, p90 } }) => {
    if (kind !== "within-horizon" || p10 === null) return false;
    return p90 === null || dayNumber(p90) - dayNumber(p10) > WIDE;
  });
  return {
    packs: plan.packs.length,
    typical: plan.packs.filter((pack) => pack.basis === "typical" && hasForecast(pack)).length,
    noForecast: plan.packs.filter((pack) => !hasForecast(pack)).length,
    wide: wide.length,
  };
}
