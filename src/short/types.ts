import type { Day } from "../calendar/day.ts";
import type { Month } from "../calendar/month.ts";

/** Devices short at a month's end: how many are expected, and the chance that any is. */
export interface Shortage {
  expected: number;
  anyChance: number;
}

/** Devices short of a good pack or of in-date supplies at a month's end. */
export interface ShortMonth {
  month: Month;
  devices: number;
  withoutBuying: Shortage;
  withSchedule: Shortage;
}

/** An order line that a budget has no room for, put off to the next fiscal year. */
export interface Deferral {
  fiscalYear: string;
  currency: string;
  /** Id of the order line. */
  line: string;
  supplier: string;
  item: string;
  quantity: number;
  orderBy: Day;
  /** The next fiscal year's first day. */
  deferredTo: Day;
  /** Minor units that the year is spared: the line and its share of the fee. */
  saves: number;
  /** Device-months short that this brings, expected over the plan's months. */
  deviceMonthsShort: number;
}

/** A schedule cut to the budget of each fiscal year. */
export interface CappedSchedule {
  /** In the order in which to defer, the least harmful per unit of money first within each year. */
  deferrals: Deferral[];
  /** Devices short by month when the rest of the schedule is followed. */
  short: Shortage[];
  cautions: string[];
}
