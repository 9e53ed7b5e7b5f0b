import { resolvePolicy } from "./resolve-policy.ts";
import type { Fleet } from "./rows.ts";

/**
 * The capacity, as a fraction of rated, below which packs of this fleet have been retired so far: the policy
 * sheet's end_of_life_percent. What a planner asks by an option ("and at 70 %?") does not change the past, so it
 * must not change what past retirements say of the fade.
 */
export function thresholdInForce(fleet: Fleet): number {
  return policyOfSheet(fleet).endOfLifePercent / 100;
}

/** The same for batteries that do not recharge: the charge left, as a fraction of a full one. */
export function primaryEndInForce(fleet: Fleet): number {
  return policyOfSheet(fleet).primaryEndPercent / 100;
}

/** The sheet's own policy; as-of says nothing of how packs were retired. */
function policyOfSheet({ policy }: Fleet) {
  return resolvePolicy(policy, 0).policy;
}
