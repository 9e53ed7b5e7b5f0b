import { describe, expect, it } from "vitest";
import { budgetText } from "../../src/out/budget-text.ts";
import { summaryText } from "../../src/out/summary-text.ts";
import { aPlan } from "./a-plan.ts";

const plan = aPlan();

describe("budgetText", () => {
  const year = {
    ...plan.budget[0]!,
    byItem: [{ item: "pack-md", planned: 473_300, p50: 473_300, p80: 1, p95: 512_200 }],
  };
  const text = budgetText(aPlan({ budget: [year] }), { width: 90 });

  it("tells each year's amounts, by item, and what they buy", () => {
    expect(text).toMatch(/2026\/27 +4,733\.00 +4,733\.00 +4,733\.00 +5,122\.00/);
    expect(text).toMatch(/pack-md +4,733\.00 +4,733\.00 +0\.01 +5,122\.00/);
    expect(text.replace(/\s+/g, " ")).toContain(
      "2026: at its worst month end 1.3 of 60 devices are expected to be short if nothing is bought, with the schedule 0.4.",
    );
    expect(text).toContain("This is a planning aid only.");
  });

  it("tells a fleet of one device in the singular", () => {
    const short = plan.short.map((month) => ({ ...month, devices: 1 }));
    const one = budgetText(aPlan({ short }), { width: 200 });
    expect(one).toContain("1.3 of 1 device is expected to be short if nothing is bought");
  });

  it("parts no year without prices, and tells nothing of devices where there are none", () => {
    const short = plan.short.map((month) => ({ ...month, devices: 0 }));
    const none = { planned: 0, p50: 0, p80: 0, p95: 0 };
    const unpriced = { ...year, ...none, currency: "XXX", byItem: [{ item: "pack-md", ...none }] };
    const bare = budgetText(aPlan({ budget: [unpriced], short }), { width: 90 });
    expect(bare).toContain("By fiscal year\nNo price is known of anything to be ordered.\n");
    expect(bare).not.toMatch(/XXX|by item|What it buys/);
  });

  it("says of a plan without orders that there are none", () => {
    expect(budgetText(aPlan({ orders: [], budget: [] }), { width: 90 })).toContain(
      "By fiscal year\nNo order is planned.\n",
    );
  });

  it("parts years whose prices have no currency, and all that the first two years pay in", () => {
    const bare = budgetText(aPlan({ budget: [{ ...year, currency: "XXX", p50: 0 }] }), { width: 90 });
    expect(bare).toContain("\n2026/27 by item\n");
    // nought is an amount where a price is known
    expect(bare).toMatch(/2026\/27 +4,733\.00 +0\.00 +4,733\.00 +5,122\.00/);
    const budget = ["2026/27", "2027/28", "2028/29"].flatMap((fiscalYear) =>
      ["EUR", "SEK"].map((currency) => ({ ...year, fiscalYear, currency })),
    );
    expect(budgetText(aPlan({ budget }), { width: 90 }).match(/^.* by item.*$/gm)).toEqual([
      "2026/27 by item, EUR",
      "2026/27 by item, SEK",
      "2027/28 by item, EUR",
      "2027/28 by item, SEK",
    ]);
  });

  it("tells no cost of an item whose price is not known, but its share of a fee, so that items add up to the year", () => {
    const none = { planned: 0, p50: 0, p80: 0, p95: 0 };
    const byItem = [{ item: "pads-adult", ...none }, ...year.byItem];
    const line = { ...plan.orders[0]!, item: "pads-adult", lineCost: 0 };
    const bare = budgetText(aPlan({ budget: [{ ...year, byItem }], orders: [...plan.orders, line] }), { width: 90 });
    expect(bare).toMatch(/pads-adult +- +- +- +-\n/);
    expect(bare).toContain("No price is known of pads-adult: ");
    // by hand: of the year's 4,733.00, 12.00 are the fee of an order without a price and 4,721.00 the packs
    const fee = { item: "pads-adult", planned: 1200, p50: 1200, p80: 1200, p95: 1200 };
    const packs = { ...year.byItem[0]!, planned: 472_100 };
    const withFee = { ...year, byItem: [fee, packs] };
    const added = budgetText(aPlan({ budget: [withFee], orders: [...plan.orders, line] }), { width: 90 });
    expect(added).toMatch(/pack-md +4,721\.00 .*\npads-adult +12\.00 +12\.00/);
  });

  it("fits a page and its width", () => {
    const lines = text.split("\n");
    expect(lines.length).toBeLessThan(60);
    for (const line of lines) expect([...line].length).toBeLessThanOrEqual(90);
  });

  it("lists what to defer where the budget is short", () => {
    const deferral = {
      fiscalYear: "2026/27",
      currency: "EUR",
      line: plan.orders[0]!.id,
      supplier: "Fenwold Batteries",
      item: "pack-md",
      quantity: 12,
      orderBy: "2026-11-01",
      deferredTo: "2027-04-01",
      saves: 473_300,
      deviceMonthsShort: 18.25,
    };
    const short = [{ ...plan.short[0]!, withinBudget: { expected: 1.2, anyChance: 0.7 } }];
    const later = { ...deferral, fiscalYear: "2029/30", item: "pads-adult" };
    const policy = { ...plan.policy, budget_per_fiscal_year: "12000" };
    const over = budgetText(aPlan({ deferrals: [deferral, later], short, policy }), { width: 90 });
    expect(over).toContain("\nOver the budget of EUR 12,000 a fiscal year: what to defer, in this order\n");
    expect(over).toMatch(/2026\/27 .*pack-md .*12 .*4,733\.00 +2027-04-01 +18\.3/);
    expect(over).toContain("1 more line of later years in `wanecast orders`.");
    expect(over.replace(/\s+/g, " ")).toContain("within the budget 1.2.");
    // by hand: the same line is put off twice; of two months, 1.2 less 0.4 and 3.0 less 0.4 devices more are short,
    // whatever the items by themselves add up to
    const months = [...short, { ...short[0]!, month: "2026-12", withinBudget: { expected: 3, anyChance: 0.9 } }];
    const summary = summaryText(aPlan({ deferrals: [deferral, later], short: months, policy }), { width: 200 });
    expect(summary).toContain(
      "The budget of EUR 12,000 a fiscal year has no room for 1 line in full: put off as `wanecast orders` lists them, that brings 3.4 device-months short (a device short at one month's end).",
    );
    const other = { ...deferral, line: "another", currency: "XXX" };
    const bare = summaryText(aPlan({ deferrals: [{ ...deferral, currency: "XXX" }, other], short, policy }), {
      width: 200,
    });
    expect(bare).toContain("The budget of 12,000 a fiscal year has no room for 2 lines in full: put off");
  });
});
