import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import type { Basis } from "../fade/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { PackRow } from "../fleet/rows.ts";
import { monthEndsAhead } from "./chance-dates.ts";
import type { Decline } from "./decline.ts";
import type { Exposure } from "./failure-chances.ts";
import { belowDates, causesByMonth, dueDates, type PackEnd } from "./pack-end.ts";
import { packSentence, type Told } from "./pack-sentence.ts";
import type { SiblingFacts } from "./sibling-facts.ts";
import type { PackLife } from "./types.ts";

/** Readings from which a pack's forecast rests on its own tests more than on its siblings'. */
const MEASURED_FROM = 3;

/** A pack with what its forecast is made of. */
export interface PackCase {
  pack: PackRow;
  item: string;
  /** Whether it does not recharge. */
  primary: boolean;
  /** Whether its age can be told. */
  dated: boolean;
  readings: Told["readings"];
  /** Whether early tests stand in for a missing rating. */
  ratedByEarlyTests: boolean;
  /** What became of its siblings once they stood where it was last read. */
  siblings: SiblingFacts | null;
  /** How it runs down; null where that cannot be forecast. */
  decline: Decline | null;
  /** Its exposure to sudden failure; null where unknown. */
  exposure: Exposure | null;
  end: PackEnd;
}

/**
 * The forecast of one pack as everyone downstream reads it, but for its site.
 *
 * @param due  chance to be due from any cause by month's end, averaged over draws
 */
export function packLife(one: PackCase, due: Float64Array, policy: Policy): PackLife {
  const { pack, item, readings, siblings, decline, end, primary } = one;
  const { asOf, horizonMonths: months } = policy;
  const lastDay = lastDayOfMonth(monthOfDay(asOf) + months - 1);
  const belowBy = belowDates(end, asOf, lastDay);
  const replaceBy = { ...dueDates(end, asOf, lastDay), note: noteOf(one) };
  const days = [asOf, ...monthEndsAhead(asOf, months).map((ahead) => asOf + ahead)];
  const [now, ...ahead] = decline === null ? [] : decline.bands(days);
  const threshold = (primary ? policy.primaryEndPercent : policy.endOfLifePercent) / 100;
  const told = { readings, siblings, now: now ?? null, failedOn: end.failedOn, threshold, primary };
  return {
    pack,
    item,
    site: null,
    basis: basisOf(readings.length),
    readings: readings.length,
    capacityNow: now ?? null,
    path: { p10: ahead.map((b) => b.p10), p50: ahead.map((b) => b.p50), p90: ahead.map((b) => b.p90) },
    belowBy,
    replaceBy,
    dueChance: due,
    causes: causesByMonth(due, end, asOf),
    says: packSentence(told, { belowBy, replaceBy }),
  };
}

function basisOf(readings: number): Basis {
  if (readings === 0) return "typical";
  return readings >= MEASURED_FROM ? "measured" : "pooled";
}

function noteOf({ dated, primary, decline, ratedByEarlyTests, end }: PackCase): string | null {
  if (primary) {
    if (decline !== null) return null;
    return end.limit === null
      ? "a battery that does not recharge lasts by its dates, and the sheets give none"
      : "a battery that does not recharge: it lasts by its dates";
  }
  if (!dated) return "no date made, in service or tested";
  if (ratedByEarlyTests) return "no rating: capacity is against the item's early tests";
  return null;
}
