import { gammaQuantile } from "../maths/gamma-distribution.ts";
import type { Needing } from "./item-places.ts";

/** How often an item is used at a place, in units a year, with the interval that holds the rate with chance 0.9. */
export interface UseRateRow {
  item: string;
  place: string;
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
export function useRateTable({ items }: Needing): UseRateRow[] {
  return items.flatMap(({ item, use }) =>
    (use?.places ?? []).map(({ key, device, events, months, rate, common }) => {
      const perYear = (12 * use!.meanUnitsPerUse) / rate.exposure;
      return {
        item: item.name,
        place: device?.device ?? key.replace(/^store /, ""),
        events,
        months,
        unitsPerYear: rate.shape * perYear,
        low: gammaQuantile(rate.shape, (1 - INTERVAL) / 2) * perYear,
        high: gammaQuantile(rate.shape, (1 + INTERVAL) / 2) * perYear,
        basis: common === null ? ("own" as const) : ("shared" as const),
      };
    }),
  );
}
