import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { assembleDates } from "../../src/out/dates-report.ts";
import { datesText } from "../../src/out/dates-text.ts";
import { usesByDuty } from "../../src/out/uses-by-duty.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { day, device, stock, use } from "../fleet/make-rows.ts";

const rate = (item: string, place: string, duty: string | null, figures: [number, number, number, number]) => {
  const [events, unitsPerYear, low, high] = figures;
  return { item, place, duty, events, months: 12, unitsPerYear, low, high, basis: "own" as const };
};

describe("usesByDuty", () => {
  // By hand: of "busy", 2 + 5 uses, 3 + 1 units a year, of which the place that uses least has 1; Gel stands before Pads
  // and "busy" before no duty, since A1 stands before A9
  it("adds up by item and duty, and keeps the least and the most", () => {
    const rows = [
      rate("Pads", "A9", null, [1, 2, 0.5, 4]),
      rate("Pads", "A2", "busy", [2, 3, 1, 6]),
      rate("Pads", "A1", "busy", [5, 1, 0.2, 2]),
      rate("Gel", "A9", null, [0, 0.5, 0, 1]),
    ];
    const uses = usesByDuty((take) => rows.forEach(take));
    expect(uses.map(({ item, duty, places }) => [item, duty, places])).toEqual([
      ["Gel", null, 1],
      ["Pads", "busy", 2],
      ["Pads", null, 1],
    ]);
    expect(uses[1]).toMatchObject({ events: 7, unitsPerYear: 4, least: 1, most: 3, low: 0.2, high: 6 });
  });

  // By hand: the rates of one duty are one group, however its devices' rows spell it: 3 + 1 units a year at two places
  it("takes a duty spelled in two ways for one, as the rates do", () => {
    const rows = [rate("Pads", "A2", "als ", [2, 3, 1, 6]), rate("Pads", "A1", "ALS", [5, 1, 0.2, 2])];
    for (const inOrder of [rows, [...rows].reverse()]) {
      const uses = usesByDuty((take) => inOrder.forEach(take));
      expect(uses).toMatchObject([{ item: "Pads", duty: "ALS", places: 2, events: 7, unitsPerYear: 4 }]);
      expect(uses).toHaveLength(1);
    }
  });

  it("makes no difference to the text whether the report's rates were asked for before", () => {
    const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 12 };
    const fleet = {
      ...emptyFleet(),
      devices: ["D1", "D2", "D3"].map((name) => device(name, { duty: name === "D3" ? "quiet" : "busy" })),
      datedStock: ["D1", "D2", "D3"].map((name) => stock("Pads", "2028-01-31", name)),
      useLog: ["2026-01-10", "2026-03-10", "2026-04-10"].map((date) => use(date, "Pads", "D1")),
    };
    const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
    const report = assembleDates(reading, policy, forecastDatedStock(fleet, policy));
    const text = datesText(report, { width: 100 });
    expect(text).toMatch(/Pads +busy +2 +3 /);
    expect(report.useRates).toHaveLength(3);
    expect(datesText(report, { width: 100 })).toBe(text);
    report.useRates = [];
    expect(datesText(report, { width: 100 })).not.toContain("9 in 10 within");
  });
});
