import type { Day } from "../calendar/day.ts";
import type { Month } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import type { LifeForecast } from "../life/types.ts";
import type { OrderSchedule } from "../orders/types.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { UsableLot } from "../supplies/types.ts";

/** A schedule with all that it was made from: what a count of devices short rests on. */
export interface Scheduled {
  fleet: Fleet;
  policy: Policy;
  life: LifeForecast;
  dated: DatedStockForecast;
  demand: readonly ItemDemand[];
  /** Stock and orders on the way. */
  lots: readonly UsableLot[];
  schedule: OrderSchedule;
}

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
  /** Minor units that the year is spared when it is put off in this order: the last line of an order takes its fee along. */
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
