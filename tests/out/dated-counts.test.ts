import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { assembleDates, countsOf, type DatesReport } from "../../src/out/dates-report.ts";
import { datesText } from "../../src/out/dates-text.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 12 };
const fleet = {
  ...emptyFleet(),
  devices: [device("D1"), device("D2")],
  catalogue: [catalogued("Pads", "pads", {}), catalogued("Gel", "gel", {})],
  datedStock: [
    stock("Pads", "2026-10-31", "D1", { quantity: 1 }),
    stock("Pads", "2026-11-10", "D2", { quantity: 2 }),
    stock("Gel", "2027-10-14", "D1", { quantity: 4 }),
    stock("Gel", "2027-11-20", "D2", { quantity: 8 }),
    stock("Gel", "2027-10-20", "D2", { quantity: 16, held: "torn" }),
    stock("Gel", "2027-10-20", "D2", { quantity: 0 }),
  ],
};
const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
const makeReport = (): DatesReport => assembleDates(reading, policy, forecastDatedStock(fleet, policy));
/** The sums of what is due, as the text adds them up. */
function due(report: DatesReport): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { item, when, units } of countsOf(report).due)
    if (units > 0) sums[`${item} ${when}`] = (sums[`${item} ${when}`] ?? 0) + units;
  return sums;
}

describe("counts of dated stock", () => {
  it("are those of the rows: the swap is 14 days before expiry, and the plan ends with 2027-10", () => {
    const report = makeReport();
    expect(countsOf(report)).toMatchObject({ rows: 6, units: 31 });
    expect(due(report)).toEqual({ "Pads overdue": 3, "Gel 2027-09": 4, "Gel later": 8 });
    expect(due({ ...report })).toEqual(due(report));
  });

  it("make no difference to the text", () => {
    const report = makeReport();
    const text = datesText(report, { width: 80 });
    expect(datesText({ ...report }, { width: 80 })).toBe(text);
    expect(text).toContain("1 dated unit is past expiry");
  });

  it("follow rows that are put in the place of the report's", () => {
    const report = makeReport();
    report.datedStock = report.datedStock.slice(0, 1);
    expect(countsOf(report).rows).toBe(1);
    const other = makeReport();
    other.datedStock = [];
    expect(countsOf(other).rows).toBe(0);
  });
});
