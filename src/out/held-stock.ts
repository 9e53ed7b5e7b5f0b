import { counted } from "../fleet/count-text.ts";
import { groupBy } from "../fleet/group-by.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { listTold, outNow } from "./out-now.ts";
import { datedRows } from "./plan-dated.ts";
import type { Plan } from "./plan-schema.ts";

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

/** All rows of dated stock, and those of them that are held. */
export interface StockWithHeld {
  datedStock: Plan["datedStock"];
  heldStock: readonly HeldRow[];
}

/** The rows of dated stock that are not held. */
export function notHeld(report: StockWithHeld): Plan["datedStock"] {
  const reasons = heldReasons(report);
  return report.datedStock.filter((_, at) => reasons[at] === null);
}

/** By row of dated stock, why it is held, or null. */
export function heldReasons({ datedStock, heldStock }: StockWithHeld): (string | null)[] {
  const held = groupBy(heldStock, keyOf);
  // of rows alike in every cell it does not matter which one is meant
  return datedStock.map((row) => (held.size === 0 ? null : (held.get(keyOf(row))?.shift()?.held ?? null)));
}

/** What is held in devices, to be replaced, and what lies elsewhere, as sentences. */
export function heldTold(held: readonly HeldRow[]): string[] {
  return [true, false].flatMap((installed) => {
    const rows = held.filter((row) => row.installed === installed);
    if (rows.length === 0) return [];
    const units = rows.reduce((sum, row) => sum + row.quantity, 0);
    const told = rows.map(({ item, place, held: reason }) => `${item} at ${place ?? "no named place"} (${reason})`);
    const what = installed ? "in devices, each counted as a gap" : "in no device in service, serving nothing";
    return [`${counted(units, "held unit")} ${what}: ${listTold(told)}.`];
  });
}

/**
 * What should not be in service today, as sentences: units past expiry, packs whose failed test stands, packs that are held
 * and units that are held in devices; and what must be looked at, since a remark that nobody reads speaks of a fault.
 */
export function outNowWithHeld(plan: Plan, held: readonly HeldRow[]): string[] {
  return [...outNow(plan), ...heldTold(held.filter(({ installed }) => installed))];
}

function keyOf({ item, expiry, place, lot, serial, quantity, swapBy, chanceUsed }: Plan["datedStock"][number]): string {
  return [item, expiry, place, lot, serial, quantity, swapBy, chanceUsed].join("\n");
}
