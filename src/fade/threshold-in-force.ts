import type { Fleet } from "../fleet/rows.ts";

const USUAL_PERCENT = 80;

/**
 * The capacity, as a fraction of rated, below which packs of this fleet have been retired so far: the policy
 * sheet's end_of_life_percent. What a planner asks by an option ("and at 70 %?") does not change the past, so it
 * must not change what past retirements say of the fade.
 */
export function thresholdInForce(fleet: Fleet): number {
  for (const { key, value } of fleet.policy) {
    const percent = Number(value);
    if (key.trim().toLowerCase() === "end_of_life_percent" && percent > 0 && percent <= 100) return percent / 100;
  }
  return USUAL_PERCENT / 100;
}
