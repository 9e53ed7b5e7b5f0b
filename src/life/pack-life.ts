import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import type { Basis } from "../fade/types.ts";
import type { Policy } from "../fleet/policy.ts";
import { monthEndsAhead } from "./chance-dates.ts";
import type { Decline } from "./decline.ts";
import { dueOnAverage } from "./due-chance.ts";
import { belowDates, causesByMonth, dueDates, type PackEnd } from "./pack-end.ts";
import { packSentence } from "./pack-sentence.ts";
import type { ServingPack } from "./serving-packs.ts";
import type { SiblingFacts } from "./sibling-facts.ts";
import type { PackLife } from "./types.ts";

/** Readings from which a pack's forecast rests on its own tests more than on its siblings'. */
const MEASURED_FROM = 3;

/** A pack with what its forecast is made of. */
export interface PackCase extends ServingPack {
  /** Whether it does not recharge. */
  primary: boolean;
  /** What became of its siblings once they stood where it was last read. */
  siblings: SiblingFacts | null;
  /** How it runs down; null where that cannot be forecast. */
  decline: Decline | null;
  end: PackEnd;
}

/** The forecast of one pack as everyone downstream reads it. */
export function packLife(one: PackCase, policy: Policy): PackLife {
  const { pack, item, site, readings, lastDoubted, lastBound, leaves, siblings, decline, end, primary } = one;
  const { asOf, horizonMonths: months } = policy;
  const lastDay = lastDayOfMonth(monthOfDay(asOf) + months - 1);
  const belowBy = belowDates(end, asOf, lastDay);
  const replaceBy = { ...dueDates(end, asOf, lastDay), note: noteOf(one) };
  const due = dueOnAverage(one, policy);
  const days = [asOf, ...monthEndsAhead(asOf, months).map((ahead) => asOf + ahead)];
  const [now, ...ahead] = decline === null ? [] : decline.bands(days);
  const threshold = (primary ? policy.primaryEndPercent : policy.endOfLifePercent) / 100;
  const told = {
    readings,
    lastDoubted,
    lastBound,
    siblings,
    now: now ?? null,
    failedOn: end.failedOn,
    held: pack.held,
    leaves,
    threshold,
    primary,
  };
  return {
    pack,
    item,
    site,
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
