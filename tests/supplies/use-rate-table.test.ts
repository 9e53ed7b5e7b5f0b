import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { useRateTable } from "../../src/supplies/use-rate-table.ts";
import { day, device, stock, use } from "../fleet/make-rows.ts";

const policy = { ...defaultPolicy(day("2026-11-01")), useLogFrom: day("2025-11-01") };

describe("useRateTable", () => {
  // Source: chi-square table, .95 and .05 quantile with 6 degrees of freedom 12.5916 and 1.6354; half of them are those of a
  // gamma of shape 3, which is the rate after three events in all
  it("gives a shared rate with its interval where places are too few to tell apart", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2")],
      datedStock: [stock("Pads", "2028-01-31", "D1"), stock("Pads", "2028-01-31", "D2")],
      useLog: ["2026-01-10", "2026-03-10", "2026-04-10"].map((date) => use(date, "Pads", "D1", { quantity: 2 })),
    };
    const rows = useRateTable(forecastDatedStock(fleet, policy).needing);
    const years = (2 * (365 / 30.4375)) / 12;
    expect(rows.map(({ place, events, basis }) => [place, events, basis])).toEqual([
      ["D1", 3, "shared"],
      ["D2", 0, "shared"],
    ]);
    expect(rows[0]!.unitsPerYear).toBeCloseTo((2 * 3) / years, 9);
    expect(rows[0]!.high).toBeCloseTo((2 * 6.2958) / years, 3);
    expect(rows[0]!.low).toBeCloseTo((2 * 0.8177) / years, 3);
  });

  it("names a store as the log writes it, whatever the order of the rows", () => {
    const log = ["Medic 10", "MEDIC 10", "Medic 9"].map((place) => use("2026-01-10", "Pads", place));
    for (const useLog of [log, [...log].reverse()]) {
      const rows = useRateTable(forecastDatedStock({ ...emptyFleet(), useLog }, policy).needing);
      expect(rows.map(({ place, events }) => [place, events])).toEqual([
        ["MEDIC 10", 2],
        ["Medic 9", 1],
      ]);
    }
  });
});
