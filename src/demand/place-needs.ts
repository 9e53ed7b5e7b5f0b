import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { firstDayOfMonth, monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import { type ItemPlace, swapDaysOf } from "../supplies/item-place.ts";
import type { ItemPlaces } from "../supplies/item-places.ts";
import { routineDays } from "../supplies/routine-days.ts";
import { type ComingLot, fittedLots } from "./fitted-lives.ts";
import { needsOfFutures } from "./futures-needs.ts";
import { placeFutures } from "./place-futures.ts";
import { NO_USES, PlaceRunner, type RunFacts } from "./place-run.ts";
import { expectedUses } from "./shared-pace.ts";
import type { SpanNeeds } from "./span-needs.ts";

/** Needs of an item at its places, by expiry, use, routine and growth. */
export interface PlaceNeeds {
  /** Needs that are certain (no use is logged), by month; empty where `needs` holds them all. */
  certain: Int32Array;
  needs: SpanNeeds | null;
  causes: Record<"expiry" | "use" | "routine" | "growth", Float64Array>;
}

/**
 * Needs at the places of an item. Without logged use they are certain: expiries, their renewals, routine and growth.
 * With it, futures are run place by place; expected uses and routine are exact, expected expiries their average.
 *
 * @param coming  what is to be bought; see `fittedLots`
 */
export function placeNeeds(ofItem: ItemPlaces, policy: Policy, coming: readonly ComingLot[] = []): PlaceNeeds {
  const months = policy.horizonMonths;
  const facts = runFacts(ofItem, policy, coming);
  const { monthStarts } = facts;
  const certain = new Int32Array(months);
  const expiry = new Float64Array(months);
  const use = new Float64Array(months);
  const routine = new Float64Array(months);
  const growth = new Float64Array(months);
  const runner = new PlaceRunner(facts);
  const starts = ofItem.places.map((place) => {
    const start = { ...place, swapDays: swapDaysOf(place, ofItem.units, policy.asOf), before: certain.slice() };
    runner.run(start, NO_USES, routineDays(place, monthStarts[months]!));
    for (let m = 0; m < months; m++) {
      certain[m] = certain[m]! + runner.needs[m]!;
      expiry[m] = expiry[m]! + runner.expiries[m]!;
    }
    addLacking(place, facts, growth);
    addExpected(place, place.routinePerYear / 12, facts, routine);
    if (place.use && ofItem.use) {
      addExpected(place, expectedUses(place.use) * ofItem.use.meanUnitsPerUse, facts, use);
    }
    return start;
  });
  const causes = { expiry, use, routine, growth };
  if (!ofItem.use) return { certain, needs: null, causes };
  const { units, futures } = placeFutures(ofItem, starts, facts, certain, expiry);
  return { certain: new Int32Array(months), needs: needsOfFutures(units, futures, months), causes };
}

function runFacts(ofItem: ItemPlaces, policy: Policy, coming: readonly ComingLot[]): RunFacts {
  const first = monthOfDay(policy.asOf);
  const months = policy.horizonMonths;
  const starts = Float64Array.from({ length: months + 1 }, (_, m) => firstDayOfMonth(first + m));
  starts[0] = policy.asOf;
  return {
    monthStarts: starts,
    fitted: fittedLots(ofItem, starts, policy, coming),
  };
}

/** Adds the units that a new device lacks on its first day. */
function addLacking({ from, until, lacking }: ItemPlace, { monthStarts }: RunFacts, into: Float64Array): void {
  if (lacking === 0 || from >= Math.min(until, monthStarts[into.length]!)) return;
  let month = 0;
  while (from >= monthStarts[month + 1]!) month++;
  into[month] = into[month]! + lacking;
}

/** Adds a rate a month over the days of each month on which the place is in service. */
function addExpected(place: ItemPlace, perMonth: number, { monthStarts }: RunFacts, into: Float64Array): void {
  if (perMonth <= 0) return;
  for (let m = 0; m < into.length; m++) {
    const days = Math.min(place.until, monthStarts[m + 1]!) - Math.max(place.from, monthStarts[m]!);
    if (days > 0) into[m] = into[m]! + (perMonth * days) / DAYS_PER_MONTH;
  }
}
