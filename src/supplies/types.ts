import type { Day } from "../calendar/day.ts";
import type { Month } from "../calendar/month.ts";

/** A month in which far more units of an item fall due than an even spread would bring. */
export interface CrowdedMonth {
  item: string;
  month: Month;
  units: number;
  evenShare: number;
  /** Chance of such a crowd, or a larger one, in any month if deliveries had fallen evenly. */
  pValue: number;
  span: { from: Month; to: Month };
  lots: string[];
  places: number;
  says: string;
}

/** One swap visit: units of an item at a place, taken out in a month before their swap date. */
export interface SwapVisit {
  month: Month;
  place: string;
  item: string;
  lot: string | null;
  quantity: number;
  swapBy: Day;
  /** Unit-days of life given up by swapping earlier than swapBy. */
  daysGivenUp: number;
}

/** What a team's number of swap visits a month means. */
export interface SwapCapacity {
  /** Visits a month that the policy allows; null = not said. */
  perMonth: number | null;
  /** Fewest visits a month that meet every expiry of the horizon. */
  smallest: number;
  /** True where perMonth is not said or is no fewer than the smallest. */
  enough: boolean;
  /** Life given up, in unit-months, by visits a month, ascending; worked out when asked for. */
  tradeOff(): { perMonth: number; unitMonthsGivenUp: number }[];
}

/** Units that change places so that more of them are used before they lapse. */
export interface Move {
  from: string;
  to: string;
  item: string;
  lot: string | null;
  quantity: number;
  /** Swap day of the units carried. */
  swapBy: Day;
  by: Day;
  /** Expected units that no longer lapse: this row's share of what the exchange as a whole saves, by its units. */
  unitsSaved: number;
}

/** Units that can serve needs: on a shelf (dated stock in a store, spare packs) or on order. */
export interface UsableLot {
  item: string;
  quantity: number;
  /** As-of for what is on the shelf; the arrival day for what is on order. */
  availableFrom: Day;
  /** Last day on which a unit may still be fitted; null = no limit. */
  usableUntil: Day | null;
  place: string | null;
  origin: "shelf" | "on-order";
  /** Lot, serial or order number. */
  reference: string | null;
}
