import { expect, it } from "vitest";
import { type Plan, resolvePolicy } from "../../src/index.ts";
import { planHead } from "../../src/out/plan-head.ts";
import { choicesOfPlan } from "../../web/embedded-choices.ts";

/** What a policy sheet says of what has no default, and of the least life. */
const SHEET = [
  ["pack_max_age_months", "48"],
  ["pack_max_cycles", "300"],
  ["swaps_per_month", "8"],
  ["use_log_from", "2025-05-01"],
  ["budget_per_fiscal_year", "12000"],
  ["currency", "EUR"],
  ["date_order", "dmy"],
  ["min_life_days", "60"],
].map(([key, value]) => ({ key: key!, value: value! }));

it("plans anew under the policy of the plan, also where the command took back what the sheet says", () => {
  const today = 20_758;
  for (const options of [
    [],
    SHEET.map(({ key }) => ({
      key,
      value: { use_log_from: "the log's first date", currency: "the catalogue's", min_life_days: "14" }[key] ?? "none",
    })),
  ]) {
    const { policy, problems } = resolvePolicy([...SHEET, ...options], today);
    expect(problems).toEqual([]);
    const head = planHead({ inputs: [], findings: [] } as never, policy, []);
    const anew = resolvePolicy([...SHEET, ...choicesOfPlan({ policy: head.policy } as Plan)], today + 1);
    expect(anew).toEqual({ policy, problems: [] });
  }
});

it("lets the least life go on following the swap margin", () => {
  const { policy } = resolvePolicy([{ key: "swap_before_expiry_days", value: "30" }], 20_758);
  const head = planHead({ inputs: [], findings: [] } as never, policy, []);
  const own = { key: "swap_before_expiry_days", value: "20" };
  expect(resolvePolicy([...choicesOfPlan({ policy: head.policy } as Plan), own], 0).policy.minLifeDays).toBe(20);
});
