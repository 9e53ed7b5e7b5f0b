import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { noForecastCautions } from "../../src/life/no-forecast-cautions.ts";
import { day, pack } from "../fleet/make-rows.ts";

const lives = (serials: string[]) =>
  serials.map((serial) => ({ pack: pack(serial), replaceBy: { kind: "no-forecast" as const } }));

describe("noForecastCautions", () => {
  it("name the packs that the plan leaves out, the first few of many", () => {
    expect(noForecastCautions([])).toEqual([]);
    expect(noForecastCautions([{ pack: pack("A"), replaceBy: { kind: "within-horizon" } }])).toEqual([]);
    expect(noForecastCautions(lives(["A"]))[0]).toMatch(/^1 pack has no forecast, .*: A\. .* leave such packs out\./);
    expect(noForecastCautions(lives(["C", "A", "B"]))[0]).toMatch(
      /^3 packs have no forecast, .*: A, B, C\. .* leave such packs out\./,
    );
    const many = Array.from({ length: 10 }, (_, n) => `P${n}`);
    expect(noForecastCautions(lives(many))[0]).toContain("P0, P1, P2, P3, P4, P5, P6, P7 and 2 more.");
  });

  it("stand in a forecast of packs without any date, which nobody calls usual", () => {
    const fleet = { ...emptyFleet(), packs: [pack("Q1", { item: "p", device: "D1" })] };
    const { cautions } = forecastPacks(fleet, defaultPolicy(day("2026-11-01")));
    expect(cautions.join(" ")).toContain("1 pack has no forecast");
    expect(cautions.join(" ")).not.toContain("rests on what is usual");
  });
});
