import { makePlan, type Plan } from "../src/index.ts";
import { type LoadedFleet, loadFleet, requireWholeReading } from "./load-fleet.ts";
import { withProgress } from "./progress.ts";
import type { SheetOptions } from "./verb-options.ts";

/** A fleet as read, with its plan. */
export interface LoadedPlan extends LoadedFleet {
  plan: Plan;
}

/**
 * Reads the inputs and plans.
 *
 * @throws InputRefused where a file was refused or nothing was found
 */
export async function loadPlan(inputs: readonly string[], options: SheetOptions): Promise<LoadedPlan> {
  const loaded = await loadFleet(inputs, options);
  requireWholeReading(loaded.reading);
  const { packs, datedStock } = loaded.reading.fleet;
  const work = `Forecasting ${packs.length} packs and ${datedStock.length} rows of dated stock ...`;
  return { ...loaded, plan: withProgress(work, () => makePlan(loaded.reading, loaded.policy)) };
}
