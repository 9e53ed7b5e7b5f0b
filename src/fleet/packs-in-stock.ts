import type { Day } from "../calendar/day.ts";
import { groupBy } from "./group-by.ts";
import { nameKey } from "./name-key.ts";
import type { DatedStockRow, Fleet, PackRow } from "./rows.ts";

/*
 * A battery may be listed twice under one serial: as a pack, and in dated stock with its expiry. It is one battery: its
 * expiry ends the pack, and is no need and no stock besides. The device in which it sits, or why it is held, may stand in
 * dated stock alone.
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

/** Packs with what only dated stock tells of them: their devices, and that they are held. */
export function packsAsInStock(fleet: Fleet): PackRow[] {
  const isPack = listedAsPack(fleet);
  const there = fleet.datedStock.filter((row) => row.quantity > 0 && isPack(row));
  if (there.length === 0) return fleet.packs;
  const devices = new Set(
    [...fleet.devices, ...fleet.packs].flatMap(({ device }) => device?.trim() && nameKey(device)),
  );
  const told = groupBy(there, ({ serial }) => nameKey(serial!));
  return fleet.packs.map((pack) => {
    const rows = told.get(nameKey(pack.serial)) ?? [];
    const placed = rows.find(({ place }) => place !== null && devices.has(nameKey(place)));
    const device = pack.device ?? placed?.place ?? null;
    const held = pack.held ?? rows.find((row) => row.held !== null)?.held ?? null;
    return device === pack.device && held === pack.held ? pack : { ...pack, device, held };
  });
}
