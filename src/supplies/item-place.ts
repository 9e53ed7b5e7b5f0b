import type { Day } from "../calendar/day.ts";
import type { DeviceRow } from "../fleet/rows.ts";
import type { StockUnit } from "./stock-units.ts";
import type { PlaceUse } from "./use-rates.ts";

/** A place where an item is installed or consumed, with everything that will take units from it. */
export interface PlaceFacts {
  key: string;
  /** null where the place is a store from which uses are logged. */
  device: DeviceRow | null;
  /** First day of the plan on which the place needs its units: as-of, or the device's in_service. */
  from: Day;
  /** Day from which it needs none any more; Infinity = open. */
  until: Day;
  /** Rows of the units installed. */
  stock: readonly StockUnit[];
  /** Units still lacking on `from` where the device is new to the fleet. */
  lacking: number;
  use: PlaceUse | null;
  /** Units a year consumed on schedule, and the share of a unit already consumed at `from`. */
  routinePerYear: number;
  routineStarted: number;
}

/** Such a place, with the days of its single units. */
export interface ItemPlace extends PlaceFacts {
  /** Swap days of the units installed, ascending; as-of for what is overdue or held. */
  readonly swapDays: readonly Day[];
}

/** The place of some facts. The days of its units are worked out when first asked for: most questions ask for rows. */
export function itemPlace(facts: PlaceFacts, asOf: Day): ItemPlace {
  return new PlaceWithDays(facts, asOf);
}

class PlaceWithDays implements ItemPlace {
  readonly key;
  readonly device;
  readonly from;
  readonly until;
  readonly stock;
  readonly lacking;
  readonly use;
  readonly routinePerYear;
  readonly routineStarted;
  readonly #asOf: Day;
  #swapDays: Day[] | null = null;

  constructor(facts: PlaceFacts, asOf: Day) {
    this.key = facts.key;
    this.device = facts.device;
    this.from = facts.from;
    this.until = facts.until;
    this.stock = facts.stock;
    this.lacking = facts.lacking;
    this.use = facts.use;
    this.routinePerYear = facts.routinePerYear;
    this.routineStarted = facts.routineStarted;
    this.#asOf = asOf;
  }

  get swapDays(): readonly Day[] {
    this.#swapDays ??= swapDaysOf(this.stock, this.#asOf);
    return this.#swapDays;
  }
}

function swapDaysOf(stock: readonly StockUnit[], asOf: Day): Day[] {
  const days: Day[] = [];
  for (const { row, swapBy } of stock) {
    const day = row.held === null ? Math.max(asOf, swapBy) : asOf;
    for (let left = row.quantity; left > 0; left--) days.push(day);
  }
  return days.sort((a, b) => a - b);
}
