import type { Day } from "../calendar/day.ts";
import type { ItemPlace } from "../supplies/item-place.ts";
import type { FittedLot } from "./fitted-lives.ts";

/** Uses at a place: the day of each (fraction allowed), ascending, and the units it takes; the first `count` are read. */
export interface PlaceUses {
  count: number;
  days: Float64Array;
  units: Int32Array;
}

export const NO_USES: PlaceUses = { count: 0, days: new Float64Array(0), units: new Int32Array(0) };

/** A place as a run begins. */
export interface RunStart extends Pick<ItemPlace, "from" | "until" | "lacking"> {
  /** Of the units installed, ascending. */
  swapDays: readonly Day[];
  /** Units by month that other places take before this one. */
  before: Int32Array;
}

/** Facts that all places of an item share. */
export interface RunFacts {
  /** First day of each month of the horizon, as-of first, and the first day after it. */
  monthStarts: Float64Array;
  /** By month, in the order in which they are taken. */
  fitted: readonly (readonly FittedLot[])[];
}

/**
 * Runs places through the horizon: uses and routine take the unit that expires first (FEFO), units left over leave
 * on their swap day, every unit that leaves is replaced at once by the next of those that are fitted in its month.
 *
 * One runner serves millions of runs, so it keeps its room between them.
 */
export class PlaceRunner {
  /** Units needed by month in the last run, and of these the expiries. */
  readonly needs: Int32Array;
  readonly expiries: Int32Array;
  private readonly months: number;
  /** Swap days of the units in place from `head` up to `tail`, ascending. */
  private readonly queue: number[] = [];
  private head = 0;
  private tail = 0;
  private month = 0;
  private before: Int32Array = new Int32Array(0);

  constructor(private readonly facts: RunFacts) {
    this.months = facts.fitted.length;
    this.needs = new Int32Array(this.months);
    this.expiries = new Int32Array(this.months);
  }

  /** @param routine  days on which routine finishes a unit, ascending */
  run(place: RunStart, { count, days, units }: PlaceUses, routine: readonly number[]): void {
    this.needs.fill(0);
    this.expiries.fill(0);
    const { from, swapDays, lacking } = place;
    this.before = place.before;
    const end = Math.min(place.until, this.facts.monthStarts[this.months]!);
    if (from >= end) return;
    const { queue } = this;
    for (let unit = 0; unit < swapDays.length; unit++) queue[unit] = swapDays[unit]!;
    this.head = 0;
    this.tail = swapDays.length;
    this.month = 0;
    for (let unit = 0; unit < lacking; unit++) this.replace(from);
    let nextUse = 0;
    let nextRoutine = 0;
    for (;;) {
      const swap = this.head < this.tail ? Math.max(from, queue[this.head]!) : Number.POSITIVE_INFINITY;
      const use = nextUse < count ? days[nextUse]! : Number.POSITIVE_INFINITY;
      const scheduled = nextRoutine < routine.length ? routine[nextRoutine]! : Number.POSITIVE_INFINITY;
      const day = Math.min(swap, use, scheduled);
      if (day >= end) return;
      if (day === swap) {
        this.take(day);
        this.expiries[this.month]!++;
      } else if (day === use) {
        this.takeSeveral(day, units[nextUse]!);
        nextUse++;
      } else {
        this.take(day);
        nextRoutine++;
      }
    }
  }

  private take(day: number): void {
    // a place that holds no unit needs one for the use itself and keeps none
    if (this.head === this.tail) this.need(day);
    else {
      this.head++;
      this.replace(day);
    }
  }

  /** Takes units of one use, of which a slip of the pen can make a thousand million. */
  private takeSeveral(day: number, units: number): void {
    for (let left = units; left > 0; left--) {
      // from here on like is replaced by like: what is still taken only adds to the needs
      if (this.head === this.tail || this.queue[this.head] === this.nextSwapDay(day)) {
        this.need(day, left);
        return;
      }
      this.take(day);
    }
  }

  private need(day: number, units = 1): void {
    const month = this.monthOf(day);
    this.needs[month] = this.needs[month]! + units;
  }

  /** Index of a day's month, which is never before that of the day asked for last. */
  private monthOf(day: number): number {
    const { monthStarts } = this.facts;
    while (this.month + 1 < this.months && day >= monthStarts[this.month + 1]!) this.month++;
    return this.month;
  }

  /** Of the unit that replaces one that leaves on a day. */
  private nextSwapDay(day: number): Day {
    const month = this.monthOf(day);
    const fitted = this.facts.fitted[month]!;
    // on average half of it stands before a unit's end
    const place = this.before[month]! + this.needs[month]! + 1 / 2;
    let lot = 0;
    while (place >= fitted[lot]!.upTo) lot++;
    return fitted[lot]!.swapDay;
  }

  /** Adds a unit and keeps the queue ascending; new units nearly always expire last. */
  private replace(day: number): void {
    const swapDay = this.nextSwapDay(day);
    this.need(day);
    const { queue, head } = this;
    let at = this.tail++;
    for (; at > head && queue[at - 1]! > swapDay; at--) queue[at] = queue[at - 1]!;
    queue[at] = swapDay;
  }
}
