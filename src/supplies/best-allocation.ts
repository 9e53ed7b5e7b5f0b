import type { Day } from "../calendar/day.ts";
import type { MovePlace, MovesFound } from "./move-place.ts";
import { eachUnit, total } from "./unit-runs.ts";

/** Allocations up to which all are looked at: the result is then the best there is. */
const MOST_ALLOCATIONS = 20_000;
/** Units in all of these allocations together: each is weighed with all its units. */
const MOST_UNITS_DEALT = 1_000_000;

/** The best allocation of all, or null where there are too many of them. */
export function bestAllocation(places: readonly MovePlace[], costPerUnitMoved: number): MovesFound | null {
  const counts = new Map<Day, number>();
  for (const { days } of places) for (const day of days) counts.set(day, (counts.get(day) ?? 0) + 1);
  const distinct = [...counts.keys()].sort((a, b) => a - b);
  const left = distinct.map((day) => counts.get(day)!);
  const ways = allocations(places, left);
  if (ways > MOST_ALLOCATIONS || ways * total(left) > MOST_UNITS_DEALT) return null;
  const before = places.map((place) => distinct.map((day) => place.days.filter((other) => other === day).length));
  const start = places.reduce((sum, place) => sum + place.value(place.days), 0);
  const memo = places.map(() => new Map<string, number>());
  const chosen: (readonly Day[])[] = places.map(() => []);
  let best: MovesFound = { days: places.map(({ days }) => days), saved: 0 };
  let most = 0;
  const give = (index: number, value: number, moved: number) => {
    if (index === places.length) {
      const saved = value - start;
      const net = saved - moved * costPerUnitMoved;
      // a hair more is rounding, which must not move anything
      if (net <= most + 1e-9) return;
      most = net;
      best = { days: [...chosen], saved };
      return;
    }
    const place = places[index]!;
    forEachChoice(left, place.days.length, (counts) => {
      const days = eachUnit(distinct, counts);
      const key = counts.join(",");
      const known = memo[index]!.get(key) ?? place.value(days);
      memo[index]!.set(key, known);
      const arrived = counts.reduce((sum, count, d) => sum + Math.max(0, count - before[index]![d]!), 0);
      chosen[index] = days;
      for (let d = 0; d < left.length; d++) left[d]! -= counts[d]!;
      give(index + 1, value + known, moved + arrived);
      for (let d = 0; d < left.length; d++) left[d]! += counts[d]!;
    });
  };
  give(0, 0, 0);
  return best;
}

/** Number of ways to share the units among the places, or more than the limit. */
function allocations(places: readonly MovePlace[], left: readonly number[]): number {
  let ways = 1;
  let remaining = total(left);
  for (const { days } of places) {
    ways *= Math.min(choose(remaining, days.length), (days.length + 1) ** Math.max(0, left.length - 1));
    remaining -= days.length;
    if (ways > MOST_ALLOCATIONS) break;
  }
  return ways;
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return ways;
}

/** Every way to take `size` units from the classes left. */
function forEachChoice(left: readonly number[], size: number, take: (counts: readonly number[]) => void): void {
  const counts = new Array<number>(left.length).fill(0);
  const fill = (at: number, remaining: number, leftAfter: number) => {
    if (at === left.length) {
      take(counts);
      return;
    }
    const later = leftAfter - left[at]!;
    // never so few that the classes after this one could not fill the rest
    const fewest = Math.max(0, remaining - later);
    for (let count = Math.min(left[at]!, remaining); count >= fewest; count--) {
      counts[at] = count;
      fill(at + 1, remaining - count, later);
    }
  };
  fill(0, size, total(left));
}
