import type { Plan, Reading } from "../src/index.ts";
import { nameKey } from "./name-key.ts";

/** Percent at which a pack of an item is at its end: a primary battery runs down to its own threshold. */
export function thresholdPercent(item: string, plan: Plan, reading: Reading): number {
  const kind = reading.fleet.catalogue.find((row) => nameKey(row.item) === nameKey(item))?.kind;
  return Number(plan.policy[kind === "primary" ? "primary_end_percent" : "end_of_life_percent"] ?? 80);
}
