import { gammaQuantile } from "../maths/gamma-distribution.ts";
import type { Needing } from "./item-places.ts";

/** How often an item is used at a place, in units a year, with the interval that holds the rate with chance 0.9. */
export interface UseRateRow {
  item: string;
  place: string;
  /** null where the place is a store, or its device's sheet names none. */
  duty: string | null;
  /** Events logged there, and the device-months in which they were. */
  events: number;
  months: number;
  unitsPerYear: number;
  low: number;
  high: number;
  /** `own` = the place's own log, drawn towards its duty's; `shared` = one rate of all places of the duty. */
  basis: "own" | "shared";
}

const INTERVAL = 0.9;

/** The use rates behind the forecast, by item and place. Worked out when asked for: intervals are slow. */
export function useRateTable(needing: Needing): UseRateRow[] {
  const rows: UseRateRow[] = [];
  eachUseRate(needing, (row) => rows.push(row));
  return rows;
}

/** The same, one row after another: what only adds them up need not keep them. */
export function eachUseRate({ items }: Needing, take: (row: UseRateRow) => void): void {
  // most places of a large fleet have one of few shapes: a count and its duty's
  const known = new Map<number, [number, number]>();
  const limits = (shape: number) => {
    const found = known.get(shape) ?? [
      gammaQuantile(shape, (1 - INTERVAL) / 2),
      gammaQuantile(shape, (1 + INTERVAL) / 2),
    ];
    known.set(shape, found);
    return found;
  };
  for (const { item, use } of items) {
    for (const { name, device, events, months, rate, common } of use?.places ?? []) {
      const [low, high] = limits(rate.shape);
      const perYear = (12 * use!.meanUnitsPerUse) / rate.exposure;
      take({
        item: item.name,
        place: name,
        duty: device?.duty ?? null,
        events,
        months,
        unitsPerYear: rate.shape * perYear,
        low: low * perYear,
        high: high * perYear,
        basis: common === null ? "own" : "shared",
      });
    }
  }
}
