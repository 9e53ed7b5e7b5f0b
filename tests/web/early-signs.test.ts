import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/calendar/day.ts";
import { earlySigns } from "../../web/early-signs.ts";
import { smallPlan, smallReading } from "../browser/fixtures/small-plan.ts";

/** Packs of one item made on one day, each with one reading a year later. */
function fleet(percents: number[], siteOf: (index: number) => string) {
  const made = dayFromIso("2025-03-01")!;
  const template = smallReading.fleet.packs[0]!;
  const packs = percents.map((_, index) => ({
    ...smallPlan.packs[0]!,
    serial: `S${index}`,
    item: "pack-a",
    site: siteOf(index),
  }));
  return {
    plan: { ...smallPlan, packs },
    reading: {
      ...smallReading,
      fleet: { ...smallReading.fleet, packs: packs.map(({ serial }) => ({ ...template, serial, made })) },
    },
    readings: new Map(percents.map((percent, index) => [`s${index}`, [{ day: made + 365, percent }]])),
  };
}

describe("earlySigns: what lies below its like at the same age", () => {
  // By hand: the median of the other nine is 95, and 95 - 86 = 9 points.
  it("names the one pack that lies nine points below", () => {
    const { plan, reading, readings } = fleet([95, 95, 95, 95, 95, 95, 95, 95, 95, 86], () => "Harbour");
    expect(earlySigns(plan, reading, readings)).toEqual([
      { kind: "pack", item: "pack-a", name: "S9", packs: 1, below: 9 },
    ]);
  });

  // By hand: each of the four hot packs sees ten others at 95 and three at 92 (median 95): 3 points, no spread.
  it("names a site whose packs all lie three points below, though no pack stands out", () => {
    const percents = [...Array.from({ length: 10 }, () => 95), 92, 92, 92, 92];
    const { plan, reading, readings } = fleet(percents, (index) => (index < 10 ? "Harbour" : "Boiler room"));
    expect(earlySigns(plan, reading, readings)).toEqual([
      { kind: "site", item: "pack-a", name: "Boiler room", packs: 4, below: 3 },
    ]);
  });

  it("says nothing where too few packs are alike", () => {
    const { plan, reading, readings } = fleet([95, 95, 95, 95, 70], () => "Harbour");
    expect(earlySigns(plan, reading, readings)).toEqual([]);
  });
});
