import type { Plan } from "../src/index.ts";

/**
 * The policy values with which an embedded plan was made, as choices for planning it anew. Its sheets' policy rows
 * travel with it, but not the command's options, which may have taken back what a row says ("none"). A shelf-life minimum
 * that follows the swap margin goes on following.
 */
export function choicesOfPlan(plan: Plan): { key: string; value: string }[] {
  const follows = plan.policy.min_life_days === plan.policy.swap_before_expiry_days;
  return Object.entries(plan.policy).map(([key, value]) => ({
    key,
    value: follows && key === "min_life_days" ? "as the swap margin" : String(value ?? "none"),
  }));
}
