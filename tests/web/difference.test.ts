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
    expect(rows.get(`Planned spend, fiscal year ${year!.fiscalYear}, EUR`)?.change).toBe("\u2212\u20ac8,162.50");
  });

  it("writes an assumed day as the reader does", () => {
    const now = structuredClone(smallPlan);
    now.policy.as_of = "2027-01-31";
    expect(rowOf(now, "Assumed: As of")).toMatchObject({ before: "Nov 25, 2026", now: "Jan 31, 2027" });
  });

  it("counts what a budget puts off", () => {
    const now = structuredClone(smallPlan);
    const { fiscalYear, currency } = now.budget[0]!;
    const put = { fiscalYear, currency, item: "pack", quantity: 1, orderBy: "2027-01-01", deferredTo: "2027-04-01" };
    const deferral = { ...put, line: "Acre|pack|2027-01", saves: 100, deviceMonthsShort: 0.5 };
    // a line put off again a year later is the same line
    now.deferrals = [deferral, { ...deferral, fiscalYear: "2099" }] as unknown as typeof now.deferrals;
    const row = differences(smallPlan, now, WORDS).find(({ what }) => what.startsWith("Order lines put off"));
    expect(row).toMatchObject({ before: "0", now: "1", change: "+1" });
  });

  it("tells devices short within a budget beside the schedule that has none", () => {
    const now = structuredClone(smallPlan);
    now.deferrals = [{ line: "Acre|pack|2027-01" }] as unknown as typeof now.deferrals;
    for (const month of now.short) month.withinBudget = { expected: 3.4, anyChance: 1 };
    // 2.0 devices at most are short with the fixture's schedule
    const row = rowOf(now, "Most devices short within the budget");
    expect(row).toMatchObject({ before: "2.0", now: "3.4", change: "+1.4" });
    for (const month of now.short) month.withinBudget = month.withSchedule;
    expect(rowOf(now, "Most devices short within the budget")).toBeUndefined();
  });

  it("counts packs at their likely dates, as the program does", () => {
    const now = structuredClone(smallPlan);
    for (const { replaceBy } of now.packs) replaceBy.p50 = null;
    expect(rowOf(now, "Packs likely due within the plan")?.now).toBe("0");
    now.packs[0]!.replaceBy.p50 = `${now.horizon.to}-28`;
    expect(rowOf(now, "Packs likely due within the plan")?.now).toBe("1");
  });

  it("tells the spend of each currency apart, and that of none without a code", () => {
    const now = structuredClone(smallPlan);
    const { fiscalYear } = now.budget[0]!;
    now.budget = ["EUR", "USD", "XXX"].map((currency) => ({ ...now.budget[0]!, currency, planned: 100_00 }));
    expect(rowOf(now, `Planned spend, fiscal year ${fiscalYear}, EUR`)?.now).toBe("\u20ac100.00");
    expect(rowOf(now, `Planned spend, fiscal year ${fiscalYear}, USD`)?.now).toContain("$100.00");
    expect(rowOf(now, `Planned spend, fiscal year ${fiscalYear}`)?.now).toBe("100.00");
  });

  // 0.04 and 0.06 devices read 0.0 and 0.1, which is 0.1 more.
  it("tells a change as the difference of what stands beside it", () => {
    const before = structuredClone(smallPlan);
    for (const month of before.short) month.withSchedule.expected = 0.04;
    const now = structuredClone(before);
    for (const month of now.short) month.withSchedule.expected = 0.06;
    const row = differences(before, now, WORDS).find(({ what }) => what === "Most devices short with the schedule");
    expect(row).toMatchObject({ before: "0.0", now: "0.1", change: "+0.1" });
  });
});

const rowOf = (now: typeof smallPlan, name: string) =>
  differences(smallPlan, now, WORDS).find(({ what }) => what === name);
