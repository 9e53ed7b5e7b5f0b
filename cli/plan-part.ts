import type { Plan } from "../src/index.ts";

/** The head of a plan, some of its keys, and the cautions: what a verb's `--json` prints. */
export function planPart<Key extends keyof Plan>(plan: Plan, keys: readonly Key[]): object {
  const { format, engine, asOf, horizon, policy, inputs, findings, cautions } = plan;
  const own = Object.fromEntries(keys.map((key) => [key, plan[key]]));
  return { format, engine, asOf, horizon, policy, inputs, findings, ...own, cautions };
}
