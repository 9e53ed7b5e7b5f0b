import { fitsToMake } from "../fade/fade-items.ts";
import type { FitTask } from "../fade/kept-fits.ts";
import { withNamedItems } from "../fleet/named-items.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { rechargeable } from "./item-limits.ts";
import { pastFleets } from "./prove/past-fleets.ts";
import { withoutOldPacks } from "./swapped-packs.ts";

/**
 * Fits of items that `makePlan` would make next, one after another: for `fitSideBySide`, where there are several
 * processors.
 */
export function fitsToPlan(sheets: Fleet, policy: Policy): FitTask[] {
  const { fleet } = withoutOldPacks(withNamedItems(sheets), policy.asOf);
  return fitsToMake(fleet, policy, rechargeable(fleet));
}

/** The same for `prove`. */
export function fitsToProve(sheets: Fleet, policy: Policy, monthsBack: readonly number[]): FitTask[] {
  const fleet = withNamedItems(sheets);
  const { now, past } = pastFleets(fleet, policy.asOf, monthsBack);
  return [now, ...past].flatMap((one) => fitsToMake(one.fleet, { ...policy, asOf: one.asOf }, rechargeable(fleet)));
}
