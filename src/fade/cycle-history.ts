import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";

/** One cycle count as it was read. */
export interface CycleCount {
  day: Day;
  cycles: number;
}

/** Cycles of one pack over time: counted where counted, at a steady rate elsewhere. */
export interface CycleHistory {
  /** Cycles a year that the pack itself shows, or null where its counts cannot tell. */
  ownRate: number | null;
  /** Cycles by a day, >= 0; before the first count and after the last, at `rate` cycles a year. */
  at(day: Day, rate: number): number;
}

/** A rate over fewer days than this says more of one busy week than of a year. */
const FEWEST_DAYS = 60;

/**
 * The cycle history of a pack from its counts. A count that falls means that the counter was reset or the pack
 * swapped under its serial: counting goes on from what had been reached, and the fall itself counts for nothing. A
 * single count out of line, where those before and after it go on as if it were not there, is a slip of the pen and
 * left out. Of counts on one day the smaller comes first.
 *
 * @param start   first day in use (no cycles yet), or null where unknown
 * @param counts  in any order
 */
export function cycleHistory(start: Day | null, counts: readonly CycleCount[]): CycleHistory {
  const sorted = withoutSlips([...counts].sort((a, b) => a.day - b.day || a.cycles - b.cycles));
  const days: Day[] = [];
  const reached: number[] = [];
  if (start !== null && (sorted.length === 0 || start <= sorted[0]!.day)) {
    days.push(start);
    reached.push(0);
  }
  let total = 0;
  let last = 0;
  for (const { day, cycles } of sorted) {
    total += cycles >= last ? cycles - last : cycles;
    last = cycles;
    if (days.length > 0 && days[days.length - 1] === day) reached[reached.length - 1] = total;
    else {
      days.push(day);
      reached.push(total);
    }
  }
  const end = days.length - 1;
  const span = end > 0 ? days[end]! - days[0]! : 0;
  const ownRate = span >= FEWEST_DAYS ? ((reached[end]! - reached[0]!) / span) * DAYS_PER_YEAR : null;
  return {
    ownRate,
    at(day, rate) {
      if (end < 0) return 0;
      if (day >= days[end]!) return reached[end]! + (rate * (day - days[end]!)) / DAYS_PER_YEAR;
      if (day <= days[0]!) return Math.max(0, reached[0]! - (rate * (days[0]! - day)) / DAYS_PER_YEAR);
      let i = 1;
      while (days[i]! < day) i++;
      const share = (day - days[i - 1]!) / (days[i]! - days[i - 1]!);
      return reached[i - 1]! + share * (reached[i]! - reached[i - 1]!);
    },
  };
}

/** Counts without those that lie below the one before or above the one after, while these two do not fall. */
function withoutSlips(counts: readonly CycleCount[]): CycleCount[] {
  const kept: CycleCount[] = [];
  counts.forEach((count, i) => {
    const before = kept.at(-1)?.cycles ?? Infinity;
    const after = counts[i + 1]?.cycles ?? -Infinity;
    const slip = before <= after && (count.cycles < before || count.cycles > after);
    if (!slip) kept.push(count);
  });
  return kept;
}
