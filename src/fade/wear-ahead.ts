import type { Day } from "../calendar/day.ts";
import { type Moment, wearAt } from "./evidence.ts";
import type { PackClock } from "./pack-clock.ts";
import { GRID_DAYS, GRID_SIZE } from "./time-grid.ts";

/** A pack's clocks from a day on. Both run evenly, unless the pack enters service later. */
export interface WearAhead {
  /** The clocks some days ahead. */
  momentAt(daysAhead: number): Moment;
  /** The clocks now, and what they gain a day. */
  now: Moment;
  perDay: Moment;
  /** Whether they run evenly, so that now and perDay say all. */
  even: boolean;
}

const LAST = GRID_DAYS[GRID_SIZE - 1]!;
/** Days at which evenness is looked for: entry into service may lie anywhere in the next years. */
const LOOKED_AT = [30, 400, 2000];
/** Years off the straight line that don't matter. */
const NOTHING = 1e-6;

/** A pack's clocks from a day on. */
export function wearAhead(clock: Pick<PackClock, "momentAt">, from: Day): WearAhead {
  const momentAt = (daysAhead: number) => clock.momentAt(from + daysAhead);
  const now = momentAt(0);
  const then = momentAt(LAST);
  const perDay = { years: (then.years - now.years) / LAST, useYears: (then.useYears - now.useYears) / LAST };
  const even = LOOKED_AT.every((days) => {
    const { years, useYears } = momentAt(days);
    return (
      Math.abs(years - now.years - days * perDay.years) < NOTHING &&
      Math.abs(useYears - now.useYears - days * perDay.useYears) < NOTHING
    );
  });
  return { momentAt, now, perDay, even };
}

/** Wear-years some days ahead. */
export function wearOn(ahead: WearAhead, useShare: number, daysAhead: number): number {
  if (!ahead.even) return wearAt(ahead.momentAt(daysAhead), useShare);
  return wearAt(ahead.now, useShare) + daysAhead * wearAt(ahead.perDay, useShare);
}

/** Days ahead at which wear reaches a value: 0 or less where it has, Infinity where it will not on the time grid. */
export function daysToWear(ahead: WearAhead, useShare: number, wear: number): number {
  const now = wearAt(ahead.now, useShare);
  if (wear <= now) return 0;
  if (ahead.even) return (wear - now) / wearAt(ahead.perDay, useShare);
  let low = 0;
  let high = LAST;
  if (wearOn(ahead, useShare, high) < wear) return Infinity;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (wearOn(ahead, useShare, middle) < wear) low = middle;
    else high = middle;
  }
  return high;
}
