import { describe, expect, it } from "vitest";
import { spendNotes } from "../../src/out/spend-notes.ts";
import { aPlan } from "./a-plan.ts";

const year = (fiscalYear: string, planned: number, p95: number, currency = "EUR") => {
  return { ...aPlan().budget[0]!, fiscalYear, planned, p95, currency };
};

describe("spendNotes", () => {
  // November 2026 to October 2029 by years from July: November to June are 8 months, July to October 4
  const horizon = { from: "2026-11", to: "2029-10" };
  const policy = { ...aPlan().policy, fiscal_year_starts: 7 };

  it("tells the years that lie in the plan in part", () => {
    expect(spendNotes(aPlan({ horizon, policy, budget: [year("2026/27", 5, 5), year("2029/30", 5, 5)] }))).toEqual([
      "Not the whole year lies in the plan: 2026/27 (8 months), 2029/30 (4 months).",
    ]);
    expect(spendNotes(aPlan({ horizon, policy, budget: [year("2027/28", 5, 5)] }))).toEqual([]);
    const allButJune = { from: "2026-07", to: "2027-05" };
    expect(spendNotes(aPlan({ horizon: allButJune, policy, budget: [year("2026/27", 5, 5)] }))).toEqual([
      "Not the whole year lies in the plan: 2026/27 (11 months).",
    ]);
    const whole = { from: "2026-07", to: "2028-06" };
    expect(spendNotes(aPlan({ horizon: whole, policy, budget: [year("2026/27", 5, 5)] }))).toEqual([]);
  });

  it("says why more may be planned than is safe for a year", () => {
    const budget = [year("2026/27", 9, 8), year("2027/28", 7, 8), year("2028/29", 9, 8), year("2028/29", 3, 2, "SEK")];
    const [, told] = spendNotes(aPlan({ horizon, policy, budget }));
    expect(told).toMatch(/^In 2026\/27 and 2028\/29 more is planned than the year's safe sum: /);
    // the reason must hold of a fleet of one item, too
    expect(told).toMatch(/: each order is sized to be safe by itself, and all will hardly be needed in full\.$/);
  });

  const [line] = aPlan().orders;
  const order = (item: string, lineCost: number) => ({ ...line!, item, lineCost });

  it("says first which items stand in no sum, since no price is known of them", () => {
    const orders = [order("pads-adult", 0), order("pack-md", 0), order("pack-md", 0), order("gel-tube", 500)];
    const [told] = spendNotes(aPlan({ orders }));
    expect(told).toBe("No price is known of pack-md, pads-adult: what that costs stands in no sum here.");
    expect(spendNotes(aPlan({ orders: [order("gel-tube", 500)] }))).toEqual([]);
  });

  // By hand: pads for March leave in January, so what is needed in early 2029 leaves in 2028, of which the plan knows nothing
  it("says to which year a longer plan may add orders that leave in it", () => {
    const budget = [year("2027", 5000, 5000), year("2028", 5000, 5000)];
    const plan = aPlan({ budget, horizon: { from: "2027-01", to: "2028-12" } });
    const leaving = (orderBy: string) => ({
      ...order("pads", 500),
      orderBy,
      covers: { from: "2027-03", to: "2027-09" },
    });
    expect(spendNotes({ ...plan, orders: [leaving("2027-01-20")] })).toEqual([
      "Nothing is planned for what is needed after 2028-12: a longer horizon may add to 2028.",
    ]);
    expect(spendNotes({ ...plan, orders: [leaving("2027-03-01")] })).toEqual([]);
  });

  // By hand: 500 of 5000 that leave in December 2027 for months up to the plan's last are a tenth, 499 are less
  it("says which year hangs on the plan's end by a large order", () => {
    const budget = [year("2027", 5000, 5000), year("2028", 9000, 9000)];
    const plan = aPlan({ budget, horizon: { from: "2027-01", to: "2028-10" } });
    const covering = (lineCost: number) => [
      { ...order("pads", lineCost), feeShare: 0, orderBy: "2027-12-20", covers: { from: "2028-01", to: "2028-10" } },
    ];
    const parts = "Not the whole year lies in the plan: 2028 (10 months).";
    expect(spendNotes({ ...plan, orders: covering(500) })).toEqual([
      parts,
      "Nothing is planned for what is needed after 2028-10: a longer horizon may add to 2027.",
    ]);
    expect(spendNotes({ ...plan, orders: covering(499) })).toEqual([parts]);
  });

  it("says that nothing is converted where no price is in the policy's currency", () => {
    const budget = [year("2026", 5, 5), year("2026", 5, 5, "SEK")];
    const plan = aPlan({ budget, horizon: { from: "2026-01", to: "2026-12" } });
    const inCurrency = (currency: string) => spendNotes({ ...plan, policy: { ...plan.policy, currency } });
    expect(inCurrency("USD")).toEqual([
      "The policy's currency is USD, the prices are in EUR and SEK: nothing is converted.",
    ]);
    expect(inCurrency("EUR")).toEqual([]);
    const policy = { ...plan.policy, currency: "USD" };
    expect(spendNotes({ ...plan, policy, budget: [year("2026", 5, 5, "XXX")] })).toEqual([]);
  });

  it("says of a year that has begun that what it has cost already is not held against its budget", () => {
    const capped = (starts: number, budget: string | null, asOf = "2026-11-01") =>
      spendNotes(
        aPlan({
          asOf,
          horizon: { from: "2026-11", to: "2027-10" },
          policy: { ...aPlan().policy, fiscal_year_starts: starts, budget_per_fiscal_year: budget },
          budget: [],
        }),
      );
    expect(capped(4, "12000")).toEqual(["What was spent in 2026/27 before 2026-11-01 is not held against its budget."]);
    expect(capped(11, "12000")).toEqual([]);
    // by hand: a year that begins on 1 November has cost something in the 19 days since
    expect(capped(11, "12000", "2026-11-20")).toEqual([
      "What was spent in 2026/27 before 2026-11-20 is not held against its budget.",
    ]);
    expect(capped(4, null)).toEqual([]);
  });
});
