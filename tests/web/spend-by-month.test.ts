import { describe, expect, it } from "vitest";
import { fiscalYearOfMonth } from "../../src/calendar/fiscal-year.ts";
import { monthFromText } from "../../src/calendar/month.ts";
import { spendByMonth } from "../../web/spend-by-month.ts";
import { smallPlan } from "../browser/fixtures/small-plan.ts";

describe("spendByMonth: planned spend adding up over the fiscal year", () => {
  it("starts anew with each fiscal year and ends at the year's orders", () => {
    const plan = { ...smallPlan, policy: { ...smallPlan.policy, fiscal_year_starts: 4 } };
    const rows = spendByMonth(plan, "EUR");
    // By hand: the sum of cost and fee share of all lines from April 2027 to March 2028.
    const inYear = plan.orders.filter(({ orderBy }) => orderBy >= "2027-04" && orderBy < "2028-04");
    const sum = inYear.reduce((total, order) => total + order.lineCost + order.feeShare, 0);
    expect(rows.find(({ month }) => month === "2028-03")?.soFar).toBe(sum);
    expect(rows.find(({ month }) => month === "2028-04")?.soFar).toBe(0);
  });

  it("names fiscal years as the engine does", () => {
    for (const start of [1, 4, 7, 10]) {
      const plan = { ...smallPlan, policy: { ...smallPlan.policy, fiscal_year_starts: start } };
      for (const { month, fiscalYear } of spendByMonth(plan, "EUR")) {
        expect(fiscalYear).toBe(fiscalYearOfMonth(monthFromText(month)!, start));
      }
    }
  });
});
