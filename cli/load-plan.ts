import { fitsToPlan, makeHeldStock, makePlan, type Plan, rememberStages } from "../src/index.ts";
import { fitInThreads } from "./fit-threads.ts";
import { type LoadedFleet, loadFleet, requireWholeReading } from "./load-fleet.ts";
import { warnOfMemory } from "./memory-note.ts";
import { clearProgress, showProgress } from "./progress.ts";
import type { SheetOptions } from "./verb-options.ts";

/** What the longer stages of the plan do, by their names in `makePlan`. */
const STAGES: Record<string, string> = {
  life: "how every pack fades",
  dated: "how dated stock lasts",
  demand: "needs by month, orders and what they cost",
};

/** A fleet as read, with its plan. */
export interface LoadedPlan extends LoadedFleet {
  plan: Plan;
  /** Dated stock that is held, worked out when asked for. */
  heldStock: () => ReturnType<typeof makeHeldStock>;
}

/**
 * Reads the inputs and plans.
 *
 * @param earlier  what the same inputs gave under another policy
 * @throws InputRefused where a file was refused or nothing was found
 */
export async function loadPlan(
  inputs: readonly string[],
  options: SheetOptions,
  earlier: LoadedFleet | null = null,
): Promise<LoadedPlan> {
  const loaded = await loadFleet(inputs, options, earlier);
  requireWholeReading(loaded.reading);
  warnOfMemory(loaded.reading, loaded.policy.horizonMonths);
  await fitInThreads(() => fitsToPlan(loaded.reading.fleet, loaded.policy));
  const names = Object.keys(STAGES);
  const stages = rememberStages();
  const plan = makePlan(loaded.reading, loaded.policy, (name, restsOn, policy, compute) => {
    const does = STAGES[name];
    if (does !== undefined) showProgress(`Planning, step ${names.indexOf(name) + 1} of ${names.length}: ${does} ...`);
    return stages(name, restsOn, policy, compute);
  });
  clearProgress();
  const { reading, policy } = loaded;
  return { ...loaded, plan, heldStock: () => makeHeldStock(reading, policy, stages) };
}
