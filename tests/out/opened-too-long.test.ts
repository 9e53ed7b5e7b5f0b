import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { assembleDates } from "../../src/out/dates-report.ts";
import { datesText } from "../../src/out/dates-text.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));

describe("opened gel in dates", () => {
  // By hand: opened on 1 July and good for 30 days is 31 July; opened on 2 October, 1 November, which is today
  it("is out now once its days after opening are over, though its label is in date", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2"), device("D3"), device("D4")],
      catalogue: [catalogued("Gel", "gel", { openedDays: 30 })],
      datedStock: [
        stock("Gel", "2027-12-31", "D1", { opened: day("2026-07-01") }),
        stock("Gel", "2027-12-31", "D2", { opened: day("2026-10-02") }),
        stock("Gel", "2026-10-31", "D3", { opened: day("2026-07-01") }),
        stock("Gel", "2027-12-31", "D4"),
      ],
    };
    const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
    const text = datesText(assembleDates(reading, policy, forecastDatedStock(fleet, policy)), { width: 100 });
    expect(text).toContain(
      [
        "Out now",
        "- 1 dated unit is past expiry: Gel at D3 (2026-10-31).",
        "- 1 opened unit is past the days after opening: Gel at D1 (swap by 2026-07-31).",
      ].join("\n"),
    );
  });
});
