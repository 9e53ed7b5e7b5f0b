import { describe, expect, it } from "vitest";
import { aheadText } from "../../src/out/ahead.ts";
import { ordersText } from "../../src/out/orders-text.ts";
import { packsText } from "../../src/out/packs-text.ts";
import { summaryText } from "../../src/out/summary-text.ts";
import { aPlan } from "./a-plan.ts";

describe("the plan in words", () => {
  it("aheadText: what will be needed, what is late, what leaves next", () => {
    expect(aheadText(aPlan())).toBe(
      "By the end of 2027-10 you will likely need 12 packs. 1 order line is late and should leave now.",
    );
    expect(aheadText(aPlan({ demand: [] }))).toMatch(
      /^By the end of 2027-10 you will likely need nothing; the orders are to be safe\. /,
    );
    expect(aheadText(aPlan({ orders: [] }))).toMatch(/Nothing has to be ordered\.$/);
    const later = aPlan().orders.map((line) => ({ ...line, late: false, orderBy: "2027-01-12" }));
    expect(aheadText(aPlan({ orders: later }))).toMatch(/The first order must leave by 2027-01-12\.$/);
  });

  it("aheadText: a plan of sheets that hold nothing it knows is no all-clear", () => {
    const unread = aPlan({ packs: [], datedStock: [], demand: [], orders: [] });
    expect(aheadText(unread)).toMatch(/^Nothing can be forecast: no battery pack with a date/);
    // packs without a date have no forecast, and shelves alone need nothing
    const none = { kind: "no-forecast" as const, p10: null, p50: null, p90: null, because: null, note: null };
    const undated = aPlan().packs.map((pack) => ({ ...pack, replaceBy: none }));
    expect(aheadText({ ...unread, packs: undated })).toMatch(/^Nothing can be forecast: .* no all-clear\.$/);
    const shelves = { datedStock: aPlan().datedStock, short: aPlan().short.map((row) => ({ ...row, devices: 0 })) };
    expect(aheadText({ ...unread, ...shelves })).toMatch(/^Nothing can be forecast/);
    const told = [summaryText, ordersText].map((write) => write({ ...unread, packs: undated }, { width: 80 }));
    for (const text of told) expect(text).not.toMatch(/Devices short|Needed/);
    // Of stock that lasts beyond the plan nothing is needed, and that is known.
    const { datedStock } = aPlan();
    expect(aheadText({ ...unread, datedStock })).toMatch(/you will likely need nothing/);
  });

  it("summaryText: the whole plan on one screen", () => {
    expect(summaryText(aPlan(), { width: 80 })).toBe(`Plan as of 2026-11-01, 12 months: 2026-11 to 2027-10

By the end of 2027-10 you will likely need 12 packs. 1 order line is late and
should leave now.

Needed (units; likely = P50, safe = P95)
item     this month  12 months: likely  safe
-------  ----------  -----------------  ----
pack-md           1                 12    13

Crowded months
- 30 units of pads-adult fall due in 2027-08.

Next orders
order by          supplier           item     units  boxes  cost EUR  arrives
----------  ----  -----------------  -------  -----  -----  --------  ----------
2026-11-01  LATE  Fenwold Batteries  pack-md     12     12  4,733.00  2026-12-13
(not shown at this width: covers)

Spend by fiscal year of the order
fiscal year  planned EUR  likely (P50)       P80  safe (P95)
-----------  -----------  ------------  --------  ----------
2026/27         4,733.00      4,733.00  4,733.00    5,122.00

Devices short, expected
end of   devices  nothing bought  any short  schedule followed  any short
-------  -------  --------------  ---------  -----------------  ---------
2026-11       60             1.3       70 %                0.4      < 1 %

Sheets
1 table with 1,200 rows: 1,199 used, 1 set aside. Findings: 1 error, 0 warnings,
0 notes. \`wanecast check\` tells how each was read.

Cautions
- This is a planning aid only.
`);
  });

  // no other figure shows that the tests of a whole column are missing, or that a budget is not in force
  it("summaryText: tells of a column of dates and of a policy value that were not used, and what to do", () => {
    const [finding] = aPlan().findings;
    const told = { ...finding!, code: "date-order-unsettled", line: null, message: "Two orders.", fix: "Give one." };
    const text = summaryText(aPlan({ findings: [finding!, told] }), { width: 80 });
    expect(text).toContain(
      "each was read.\nerror: packs.csv, column 3: Two orders. [date-order-unsettled]\n  Fix: Give one.\n\nCautions",
    );
    const budget = { ...told, code: "policy-unusable", message: '"12.000" cannot be used.' };
    expect(summaryText(aPlan({ findings: [budget] }), { width: 80 })).toContain('"12.000" cannot be used.');
  });

  it("summaryText: a plan of one month tells it once, in the singular", () => {
    const [demand] = aPlan().demand;
    const { p50, p95 } = demand!.cumulative;
    const cumulative = { mean: [0.5], p50: p50.slice(0, 1), p80: [1], p95: p95.slice(0, 1) };
    const horizon = { from: "2026-11", to: "2026-11" };
    const text = summaryText(aPlan({ horizon, demand: [{ ...demand!, cumulative }] }), { width: 80 });
    expect(text).toMatch(/^Plan as of 2026-11-01, 1 month: 2026-11 to 2026-11\n/);
    expect(text).toContain("item     1 month: likely  safe\n");
    expect(text).toMatch(/^pack-md +1 +2$/m);
  });

  it("ordersText: marks lines that the next plan may change, and leaves out devices where there are none", () => {
    const [line] = aPlan().orders;
    const [now, later] = ["2026-11-20", "2027-03-01"].map((orderBy) => ({ ...line!, orderBy, late: false }));
    const text = ordersText(aPlan({ orders: [now!, later!] }), { width: 120 });
    expect(text).toMatch(/^2026-11-20 {12}Fenwold/m);
    expect(text).toMatch(/^2027-03-01 {2}forecast {2}Fenwold/m);
    expect(text).toContain(
      "A line marked forecast leaves after the next plan, which may change it: do not order it yet.",
    );
    expect(ordersText(aPlan(), { width: 120 })).not.toContain("forecast");
    const short = aPlan().short.map((month) => ({ ...month, devices: 0 }));
    expect(ordersText(aPlan({ short }), { width: 120 })).not.toContain("Devices short");
  });

  it("ordersText: no amount where no price is known, a currency's column where there are several", () => {
    const [line] = aPlan().orders;
    const free = { ...line!, lineCost: 0, feeShare: 0, currency: "XXX", late: false };
    expect(ordersText(aPlan({ orders: [free] }), { width: 120 })).toMatch(/ boxes {2}cost {2}arrives/);
    expect(ordersText(aPlan({ orders: [free] }), { width: 120 })).toMatch(/ 12 {5}- {2}2026-12-13/);
    // a currency alone is no price
    const unpriced = aPlan({ orders: [line!, { ...free, currency: "EUR" }] });
    expect(ordersText(unpriced, { width: 120 })).toMatch(/ 12 {9}- {2}2026-12-13/);
    // nor has what is not priced a currency to set beside the others
    const bare = ordersText(aPlan({ orders: [line!, free] }), { width: 120 });
    expect(bare).toMatch(/ cost EUR {2}arrives/);
    const both = ordersText(aPlan({ orders: [line!, { ...line!, currency: "SEK" }, free] }), { width: 120 });
    expect(both).toMatch(/ cost {2}currency {2}arrives/);
    expect(both).toMatch(/4,733\.00 {2}EUR /);
    expect(both).toMatch(/ - {2}- /);
    expect(both).not.toContain("XXX");
  });

  it("ordersText: a year's spend that is not known stands alone only where nothing of the year is", () => {
    const [year] = aPlan().budget;
    const amounts = { planned: 0, p50: 0, p80: 0, p95: 0 };
    const none = { ...year!, currency: "XXX", ...amounts, byItem: [{ item: "pack-md", ...amounts }] };
    const text = ordersText(aPlan({ budget: [year!, none, { ...none, fiscalYear: "2027/28" }] }), { width: 120 });
    expect(text).toMatch(/planned EUR .*\n.*\n2026\/27 +4,733\.00 .*\n2027\/28 +- +- +- +-\n/);
  });

  it("ordersText: tells a year without orders as one that takes nothing", () => {
    const [year] = aPlan().budget;
    const without = { ...year!, fiscalYear: "2027/28", planned: 0, p50: 0, p80: 0, p95: 0, byItem: [] };
    expect(ordersText(aPlan({ budget: [year!, without] }), { width: 120 })).toMatch(
      /\n2027\/28 +0\.00 +0\.00 +0\.00 +0\.00\n/,
    );
  });

  it("packsText: counts packs without a forecast, and says so where there is no pack", () => {
    const none = { kind: "no-forecast" as const, p10: null, p50: null, p90: null, because: null, note: null };
    const [one, other] = aPlan().packs;
    const text = packsText(aPlan({ packs: [one!, { ...other!, replaceBy: none }] }), { width: 120 });
    expect(text.replace(/\s+/g, " ")).toContain(
      "2 packs in service: 0 due now, 1 by the end of 2027-10 (each counted at its likely date), and 1 without a forecast.",
    );
    expect(packsText(aPlan({ packs: [] }), { width: 80 })).toContain("\nNo battery pack in service was read.\n");
  });

  it("packsText: counts thousands as every other count", () => {
    const [one] = aPlan().packs;
    const packs = Array.from({ length: 1200 }, (_, n) => ({ ...one!, serial: `P${n}` }));
    expect(packsText(aPlan({ packs }), { width: 200 })).toContain(
      "1,200 packs in service: 0 due now, 1,200 by the end of 2027-10",
    );
  });

  it("packsText: packs in the order of their dates, the near ones told", () => {
    const text = packsText(aPlan(), { width: 120 });
    // a plan of a year has one end, a longer one has its own besides
    expect(text).toContain("2 packs in service: 0 due now, 1 by the end of 2027-10 (each");
    expect(packsText(aPlan({ horizon: { from: "2026-11", to: "2028-10" } }), { width: 120 })).toContain(
      "2 packs in service: 0 due now, 1 by the end of 2027-10, 1 by the end of 2028-10",
    );
    expect(text).toMatch(/M22-001 +pack-md +MD-01 +North Station +2027-02-14 +2026-12 to 2027-06 +fade +81 %/);
    expect(text).toMatch(/M25-002 +pack-md +- +North Station +after 2027-10 +2028-01 to never +fade +- /);
    expect(text).toContain("- M22-001: 81 % at the last test.");
    expect(text).not.toContain("- M25-002");
  });

  it("what is past its date or failed its test stands out", () => {
    const [pack, other] = aPlan().packs;
    const [row] = aPlan().datedStock;
    const failed = { ...pack!, replaceBy: { ...pack!.replaceBy, because: "failed-test" as const } };
    const plan = aPlan({
      packs: [failed, { ...other!, replaceBy: failed.replaceBy }],
      datedStock: [
        { ...row!, expiry: "2026-10-31", quantity: 2, place: "AED-04" },
        { ...row!, expiry: "2026-11-01", quantity: 4 },
      ],
    });
    expect(summaryText(plan, { width: 90 })).toContain(
      [
        "Out now",
        "- 2 dated units are past expiry: 2 of pads-adult at AED-04 (2026-10-31).",
        "- 2 packs have failed the last test: M22-001 in MD-01, M25-002 in North Station.",
      ].join("\n"),
    );
  });

  it("tells a remark that speaks of a fault and is not read, and where it stands", () => {
    const place = { file: "packs.csv", sheet: null, line: 3, lines: [7], column: 5, value: "swollen" };
    const words = { message: '"swollen" speaks of a fault; and 1 more row.', fix: "Look at the thing now." };
    const findings = [{ code: "fault-unread", severity: "warning" as const, ...place, ...words }];
    expect(summaryText(aPlan({ findings }), { width: 90 })).toContain(
      'Out now\n- packs.csv, line 3: "swollen" speaks of a fault; and 1 more row.\n',
    );
  });

  it("names the tab of a workbook where it tells what was found in tests and remarks", () => {
    const found = {
      severity: "warning" as const,
      file: "fleet.xlsx",
      sheet: "Tests",
      line: 7,
      lines: [],
      column: null,
    };
    const findings = ["reading-doubted", "fault-unread"].map((code) => {
      return { ...found, code, value: "55", message: "Odd.", fix: "Look." };
    });
    const plan = aPlan({ findings });
    expect(packsText(plan, { width: 80 })).toContain("Found in the tests\n- fleet.xlsx, tab Tests, line 7: Odd.\n");
    expect(summaryText(plan, { width: 80 })).toContain("Out now\n- fleet.xlsx, tab Tests, line 7: Odd.\n");
  });

  it("ordersText: why a late line is late", () => {
    expect(ordersText(aPlan(), { width: 80 })).toContain(
      "Late\n- pack-md from Fenwold Batteries: Twelve packs fade.\n",
    );
  });

  it.each([60, 80, 120])("every text fits %i columns", (width) => {
    for (const text of [summaryText, packsText, ordersText].map((write) => write(aPlan(), { width }))) {
      for (const line of text.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(width);
    }
  });
});
