import type { Plan } from "./plan-schema.ts";

type DatedRow = Plan["datedStock"][number];

/** Rows of dated stock that stand together and agree in item, expiry and swap day: far fewer than rows in a large fleet. */
export interface DatedRun {
  item: string;
  expiry: string;
  swapBy: string;
  rows: DatedRow[];
  units: number;
  /** Units expected to be used before the swap day. */
  used: number;
}

/** The runs of some rows, in their order; rows of no units are left out. */
export function datedRuns(rows: readonly DatedRow[]): DatedRun[] {
  const runs: DatedRun[] = [];
  let run: DatedRun | null = null;
  for (const row of rows) {
    const { item, expiry, swapBy, quantity } = row;
    if (quantity === 0) continue;
    if (run === null || item !== run.item || expiry !== run.expiry || swapBy !== run.swapBy) {
      run = { item, expiry, swapBy, rows: [], units: 0, used: 0 };
      runs.push(run);
    }
    run.rows.push(row);
    run.units += quantity;
    run.used += quantity * row.chanceUsed;
  }
  return runs;
}
