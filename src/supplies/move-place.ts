import type { Day } from "../calendar/day.ts";

/** A place that can give and take units of one item. */
export interface MovePlace {
  /** Swap days of its movable units, ascending. */
  days: Day[];
  /** Expected units used before their swap days, for a set of swap days (ascending) of the place's size. */
  value(days: readonly Day[]): number;
  /** Expected uses by a day, to find places that use much. */
  expectedUses(day: Day): number;
}

/** What a search for moves found: the swap days that each place ends with, and the units saved by it before costs. */
export interface MovesFound {
  days: (readonly Day[])[];
  saved: number;
}
