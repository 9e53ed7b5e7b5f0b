import type { Day } from "../calendar/day.ts";
import { nameKey } from "./name-key.ts";
import type { DatedStockRow, Fleet } from "./rows.ts";

/*
 * A battery may be listed twice under one serial: as a pack, and in dated stock with its expiry. It is one battery: its
 * expiry ends the pack, and is no need and no stock besides.
 */

/** Tells rows of dated stock that are a pack under the same serial. */
export function listedAsPack(fleet: Fleet): (row: DatedStockRow) => boolean {
  // most fleets list the two apart, and a list of stock is long
  if (fleet.packs.length === 0) return () => false;
  const serials = new Set(fleet.packs.map(({ serial }) => nameKey(serial)));
  return ({ serial }) => serial !== null && serials.has(nameKey(serial));
}

/** Expiry dates by the serial under which they stand in dated stock, the earliest of each. */
export function useByDates(fleet: Fleet): Map<string, Day> {
  const dates = new Map<string, Day>();
  for (const { serial, expiry } of fleet.datedStock) {
    if (serial === null) continue;
    const key = nameKey(serial);
    dates.set(key, Math.min(expiry, dates.get(key) ?? expiry));
  }
  return dates;
}
