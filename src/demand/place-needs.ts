import { firstDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { firstAbove } from "../maths/first-above.ts";
import { seededRandom } from "../maths/random.ts";
import { seedFromText } from "../maths/text-seed.ts";
import type { ItemPlace, ItemPlaces } from "../supplies/item-places.ts";
import { routineDays } from "../supplies/routine-days.ts";
import { swapDayOfReplacement } from "../supplies/unit-life.ts";
import { DAYS_PER_MONTH } from "../supplies/use-rates.ts";
import { type LeaveCause, type RunFacts, runPlace, type UseEvent } from "./place-run.ts";
import { expectedUses, type PacedFutures, pacedFutures, rateAt } from "./shared-pace.ts";
import type { SpanNeeds } from "./span-needs.ts";
import { dealEvents } from "./use-draws.ts";

/** Futures run for an item whose use is uncertain; the chance error of a 95 % level is then about 0.5 %. */
const FUTURES = 2000;
/** Fewer where many places add up, each of which averages out. */
const FUTURES_OF_MANY_PLACES = 1000;
const MANY_PLACES = 500;

/** Needs of an item at its places, by expiry, use, routine and growth. */
export interface PlaceNeeds {
  /** Needs that are certain (no use is logged), by month; empty where `needs` holds them all. */
  certain: Int32Array;
  needs: SpanNeeds | null;
  causes: Record<LeaveCause, Float64Array>;
}

/**
 * Needs at the places of an item. Without logged use they are certain: expiries, their renewals, routine and growth.
 * With it, futures are run place by place; expected uses and routine are exact, expected expiries their average.
 */
export function placeNeeds(ofItem: ItemPlaces, policy: Policy): PlaceNeeds {
  const months = policy.horizonMonths;
  const facts = runFacts(ofItem, policy);
  const end = facts.monthStarts[months]!;
  const certain = new Int32Array(months);
  const causes = {
    expiry: new Float64Array(months),
    use: new Float64Array(months),
    routine: new Float64Array(months),
    growth: new Float64Array(months),
  };
  for (const place of ofItem.places) {
    runPlace(place, [], routineDays(place, end), facts, (cause, month) => {
      certain[month] = certain[month]! + 1;
      if (cause !== "routine") causes[cause][month] = causes[cause][month]! + 1;
    });
    addExpected(place, place.routinePerYear / 12, facts, causes.routine);
    if (place.use && ofItem.use) {
      const unitsPerMonth = expectedUses(place.use) * ofItem.use.meanUnitsPerUse;
      addExpected(place, unitsPerMonth, facts, causes.use);
    }
  }
  if (!ofItem.use) return { certain, needs: null, causes };
  const futures = ofItem.places.length > MANY_PLACES ? FUTURES_OF_MANY_PLACES : FUTURES;
  const totals = runFutures(ofItem, facts, certain, futures, causes.expiry);
  return { certain: new Int32Array(months), needs: needsOfFutures(totals, futures, months), causes };
}

function runFacts({ item }: ItemPlaces, policy: Policy): RunFacts {
  const first = monthOfDay(policy.asOf);
  const months = policy.horizonMonths;
  const starts = Float64Array.from({ length: months + 1 }, (_, m) => firstDayOfMonth(first + m));
  starts[0] = policy.asOf;
  return {
    monthStarts: starts,
    swapDayOfReplacement: Float64Array.from({ length: months }, (_, m) =>
      swapDayOfReplacement(item, first + m, policy),
    ),
  };
}

/** Adds a rate a month over the days of each month on which the place is in service. */
function addExpected(place: ItemPlace, perMonth: number, { monthStarts }: RunFacts, into: Float64Array): void {
  if (perMonth <= 0) return;
  for (let m = 0; m < into.length; m++) {
    const days = Math.min(place.until, monthStarts[m + 1]!) - Math.max(place.from, monthStarts[m]!);
    if (days > 0) into[m] = into[m]! + (perMonth * days) / DAYS_PER_MONTH;
  }
}

/** Units needed by future and month (index = future * months + month); adjusts the expected expiries. */
function runFutures(
  ofItem: ItemPlaces,
  facts: RunFacts,
  certain: Int32Array,
  futures: number,
  expiry: Float64Array,
): Int32Array {
  const months = certain.length;
  const end = facts.monthStarts[months]!;
  const totals = new Int32Array(futures * months);
  for (let i = 0; i < totals.length; i++) totals[i] = certain[i % months]!;
  const used = ofItem.places.filter((place) => place.use !== null && place.from < end);
  const pacesOf = new Map<string, PacedFutures[]>();
  const groups = groupBy(used, (place) => place.use!.common ?? `\n${place.key}`);
  for (const [, places] of groups) {
    const random = seededRandom(seedFromText(`${ofItem.item.key}\n${places[0]!.key}`));
    const spans = places.map((place) => (Math.min(place.until, end) - place.from) / DAYS_PER_MONTH);
    // where each place's time ends, when the places' times are laid end to end
    const ends = new Float64Array(spans.length);
    let time = 0;
    for (let i = 0; i < spans.length; i++) {
      time += spans[i]!;
      ends[i] = time;
    }
    const routine = places.map((place) => routineDays(place, end));
    const quiet = places.map((place, i) => quietRun(place, routine[i]!, facts));
    const use = places[0]!.use!;
    const duty = use.prior?.duty ?? "";
    const paces = pacesOf.get(duty) ?? pacedFutures(use.prior, futures);
    pacesOf.set(duty, paces);
    let into = totals;
    const need = (cause: LeaveCause, month: number) => {
      into[month] = into[month]! + 1;
      if (cause === "expiry") expiry[month] = expiry[month]! + 1 / futures;
    };
    const runAt = (index: number, uses: UseEvent[]) => {
      inOrderOfDays(uses);
      for (const { month, needs, expiries } of quiet[index]!) {
        into[month] = into[month]! - needs;
        expiry[month] = expiry[month]! - expiries / futures;
      }
      runPlace(places[index]!, uses, routine[index]!, facts, need);
    };
    // nearly all places have a rate of their own: no places to deal their events to
    const runAlone = (events: number) => {
      const uses: UseEvent[] = [];
      for (let event = 0; event < events; event++) {
        const day = places[0]!.from + random.uniform() * time * DAYS_PER_MONTH;
        uses.push({ day, units: sizeOf(ofItem, random.uniform()) });
      }
      runAt(0, uses);
    };
    const runTogether = (events: number) => {
      const usesAt = new Map<number, UseEvent[]>();
      for (let event = 0; event < events; event++) {
        // given their number, the events of a common rate fall evenly over all the places' time
        const at = random.uniform() * time;
        const index = firstAbove(ends, 0, ends.length - 1, at);
        const uses = usesAt.get(index) ?? [];
        const since = at - (index > 0 ? ends[index - 1]! : 0);
        uses.push({ day: places[index]!.from + since * DAYS_PER_MONTH, units: sizeOf(ofItem, random.uniform()) });
        usesAt.set(index, uses);
      }
      for (const [index, uses] of usesAt) runAt(index, uses);
    };
    const run = (future: number, events: number) => {
      into = totals.subarray(future * months, (future + 1) * months);
      if (places.length === 1) runAlone(events);
      else runTogether(events);
    };
    for (const { pace, among } of paces) dealEvents(rateAt(use, pace), time, among, random, run);
  }
  for (let m = 0; m < months; m++) expiry[m] = Math.max(0, expiry[m]!);
  return totals;
}

/** Sorts uses by day, by insertion: nearly always there are a few, and millions of futures have some. */
function inOrderOfDays(uses: UseEvent[]): void {
  if (uses.length > 30) {
    uses.sort((a, b) => a.day - b.day);
    return;
  }
  for (let i = 1; i < uses.length; i++) {
    const use = uses[i]!;
    let at = i;
    for (; at > 0 && uses[at - 1]!.day > use.day; at--) uses[at] = uses[at - 1]!;
    uses[at] = use;
  }
}

/** Needs of a place without uses, in the months that have any. */
function quietRun(place: ItemPlace, routine: readonly number[], facts: RunFacts) {
  const months = facts.swapDayOfReplacement.length;
  const needs = new Int32Array(months);
  const expiries = new Int32Array(months);
  runPlace(place, [], routine, facts, (cause, month) => {
    needs[month] = needs[month]! + 1;
    if (cause === "expiry") expiries[month] = expiries[month]! + 1;
  });
  return Array.from(needs, (count, month) => ({ month, needs: count, expiries: expiries[month]! })).filter(
    (told) => told.needs > 0,
  );
}

function sizeOf({ use }: ItemPlaces, level: number): number {
  let below = 0;
  const sizes = use!.unitsPerUse;
  for (let units = 0; units < sizes.length; units++) {
    below += sizes[units]!;
    if (level < below) return units;
  }
  return sizes.length - 1;
}

function needsOfFutures(totals: Int32Array, futures: number, months: number): SpanNeeds {
  // running sums make a span's needs one subtraction
  const upTo = new Int32Array(totals.length);
  for (let i = 0; i < totals.length; i++) upTo[i] = totals[i]! + (i % months === 0 ? 0 : upTo[i - 1]!);
  return {
    countsIn(after, through) {
      const inSpan = new Int32Array(futures);
      let most = 0;
      for (let future = 0; future < futures; future++) {
        const at = future * months;
        const count = upTo[at + through]! - (after < 0 ? 0 : upTo[at + after]!);
        inSpan[future] = count;
        if (count > most) most = count;
      }
      const chances = new Float64Array(most + 1);
      for (const count of inSpan) chances[count] = chances[count]! + 1;
      for (let n = 0; n <= most; n++) chances[n] = chances[n]! / futures;
      return chances;
    },
    quantileIn: () => null,
    addPath(_draw, random, into) {
      // draws and futures are apart: a draw carries what packs share, which places have no part in
      const future = Math.floor(random() * futures);
      for (let m = 0; m < months; m++) into[m] = into[m]! + totals[future * months + m]!;
    },
  };
}
