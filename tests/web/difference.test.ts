import { describe, expect, it } from "vitest";
import { differences } from "../../web/difference.ts";
import { smallPlan } from "../browser/fixtures/small-plan.ts";

const WORDS = [{ key: "end_of_life_percent", unit: "% of rated capacity", default: "80", explains: "" }];

describe("differences: two plans side by side", () => {
  it("tells nothing of plans that agree", () => {
    expect(differences(smallPlan, structuredClone(smallPlan), WORDS)).toEqual([]);
  });

  it("gives each measure before and now, and by how much it changed", () => {
    const now = structuredClone(smallPlan);
    now.policy.end_of_life_percent = 70;
    const [year] = now.budget;
    year!.planned -= 8_162_50;
    now.orders = now.orders.slice(1);
    const rows = new Map(differences(smallPlan, now, WORDS).map((row) => [row.what, row]));
    const before = smallPlan.policy.end_of_life_percent;
    expect(rows.get("Assumed: End of life, % of rated capacity")).toMatchObject({
      before: String(before),
      now: "70",
      change: "\u2013",
    });
    expect(rows.get("Order lines")).toMatchObject({ now: String(now.orders.length), change: "\u22121" });
    expect(rows.get(`Planned spend, fiscal year ${year!.fiscalYear}`)?.change).toBe("\u2212\u20ac8,162.50");
  });

  it("counts what a budget puts off", () => {
    const now = structuredClone(smallPlan);
    const { fiscalYear, currency } = now.budget[0]!;
    const put = { fiscalYear, currency, item: "pack", quantity: 1, orderBy: "2027-01-01", deferredTo: "2027-04-01" };
    const deferral = { ...put, line: "Acre|pack|2027-01", saves: 100, deviceMonthsShort: 0.5 };
    // a line put off again a year later is the same line
    now.deferrals = [deferral, { ...deferral, fiscalYear: "2099" }] as unknown as typeof now.deferrals;
    const row = differences(smallPlan, now, WORDS).find(({ what }) => what.startsWith("Order lines put off"));
    expect(row).toMatchObject({ now: "1", change: "+1" });
  });
});
