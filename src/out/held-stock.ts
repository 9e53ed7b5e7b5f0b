import { counted } from "../fleet/count-text.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { listTold } from "./out-now.ts";
import { datedRows } from "./plan-dated.ts";
import type { Plan } from "./plan-schema.ts";
import { sortBy } from "./sort-by.ts";

/** A row of dated stock that is held, as the plan has it, with the reason. */
export type HeldRow = Plan["datedStock"][number] & { held: string; installed: boolean };

/** Held stock, which serves nothing, as rows in the order of the plan's. */
export function heldRows(stock: StockUnits): HeldRow[] {
  // what does not serve is held or holds no units
  const held = stock.idle.filter((at) => stock.quantity[at]! > 0);
  const rows = held.map((at) => {
    const [row] = datedRows(stock, [at]);
    return { ...row!, held: stock.rows[at]!.held!, installed: stock.placeOf(at).installed };
  });
  return sortBy(rows, (row) => [row.item, row.expiry, row.place, row.lot, row.serial, row.quantity, row.held]);
}

/** The rows of dated stock that are not held. */
export function notHeld(report: { datedStock: Plan["datedStock"]; heldStock: readonly HeldRow[] }): Plan["datedStock"] {
  if (report.heldStock.length === 0) return report.datedStock;
  const held = new Map<string, number>();
  for (const row of report.heldStock) held.set(keyOf(row), (held.get(keyOf(row)) ?? 0) + 1);
  return report.datedStock.filter((row) => {
    const key = keyOf(row);
    const left = held.get(key) ?? 0;
    // of rows alike in every cell it does not matter which one goes
    if (left > 0) held.set(key, left - 1);
    return left === 0;
  });
}

/** What is held in devices, to be replaced, and what on shelves, as sentences. */
export function heldTold(held: readonly HeldRow[]): string[] {
  return [true, false].flatMap((installed) => {
    const rows = held.filter((row) => row.installed === installed);
    if (rows.length === 0) return [];
    const units = rows.reduce((sum, row) => sum + row.quantity, 0);
    const told = rows.map(({ item, place, held: reason }) => `${item} at ${place ?? "no named place"} (${reason})`);
    const one = installed
      ? "held unit is in a device and counts as a gap"
      : "held unit is on a shelf and serves nothing";
    const more = installed
      ? "held units are in devices and count as gaps"
      : "held units are on shelves and serve nothing";
    return [`${counted(units, one, more)}: ${listTold(told)}.`];
  });
}

function keyOf({ item, expiry, place, lot, serial, quantity, swapBy, chanceUsed }: Plan["datedStock"][number]): string {
  return [item, expiry, place, lot, serial, quantity, swapBy, chanceUsed].join("\n");
}
