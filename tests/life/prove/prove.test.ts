import { describe, expect, it } from "vitest";
import { addMonths } from "../../../src/calendar/day.ts";
import { defaultPolicy } from "../../../src/fleet/policy.ts";
import { emptyFleet, type Fleet, type RuntimeTestRow } from "../../../src/fleet/rows.ts";
import { prove } from "../../../src/life/prove/prove.ts";
import { type ProvedLife, scoreItem } from "../../../src/life/prove/score-item.ts";
import { seededRandom } from "../../../src/maths/random.ts";
import { catalogued, day, pack } from "../../fleet/make-rows.ts";

const asOf = day("2026-11-01");
const source = { file: "made-up.csv", sheet: null, line: 2 };

function percentTest(serial: string, date: number, percent: number): RuntimeTestRow {
  const blank = { minutes: null, wh: null, ah: null, result: null, loadW: null, temperatureC: null, cycles: null };
  return { serial, date, percent, ...blank, fullCharge: null, atLeast: null, source };
}

/** Ten packs that lose four percent a year, tested twice a year and retired at the first test below 80 %. */
function fadingFleet(): Fleet {
  const random = seededRandom(77);
  const fleet = emptyFleet();
  fleet.catalogue = [catalogued("p", "pack")];
  for (let i = 0; i < 10; i++) {
    const serial = `P${i}`;
    const inService = asOf - Math.round(365.25 * (2 + 0.7 * i));
    let retired: number | null = null;
    for (let date = inService + 20; date <= asOf && retired === null; date += 180) {
      const percent = 100 - (4 * (date - inService)) / 365.25 + random.normal();
      fleet.runtimeTests.push(percentTest(serial, date, percent));
      if (percent < 80) retired = date;
    }
    const end = retired === null ? {} : { retired, retiredBecause: "faded" as const };
    fleet.packs.push(pack(serial, { item: "p", inService, ...end }));
  }
  return fleet;
}

const life = (facts: Partial<ProvedLife>): ProvedLife => ({
  item: "p",
  serial: "A",
  cut: 500,
  start: 0,
  after: 900,
  by: 1100,
  forecast: { p10: 800, p50: 1100, p90: 1500 },
  line: 1200,
  age: 1000,
  ...facts,
});

describe("scoreItem", () => {
  // By hand: the life ended at 1000; 1100 is a tenth of it off, 1200 two tenths, 1000 none; the interval is 0.7 wide.
  it("measures errors and width as shares of the life", () => {
    const score = scoreItem("p", [life({})], [], []);
    expect(score.error).toEqual({ mean: 0.1, median: 0.1 });
    expect(score.line).toEqual({ mean: 0.2, median: 0.2 });
    expect(score.age).toEqual({ mean: 0, median: 0 });
    expect(score.width).toBeCloseTo(0.7, 12);
    expect(score.inside).toBe(1);
  });

  it("counts an endless forecast as three lives off, and an end outside as outside", () => {
    const endless = life({ line: null, forecast: { p10: 1200, p50: null, p90: null } });
    const score = scoreItem("p", [endless], [], []);
    expect(score.error!.mean).toBe(3);
    expect(score.line!.mean).toBe(3);
    expect(score.inside).toBe(0);
  });

  it("says nothing where there is nothing to score", () => {
    expect(scoreItem("p", [], [], [])).toMatchObject({ lives: 0, error: null, inside: null, width: null, readings: 0 });
  });
});

describe("prove", () => {
  const fleet = fadingFleet();
  const policy = defaultPolicy(asOf);

  it("scores the ends that came after the cut-off", () => {
    const { scores, cuts } = prove(fleet, policy, [18]);
    expect(cuts).toEqual([addMonths(asOf, -18)]);
    const [one, all] = scores;
    expect(one).toMatchObject({ item: "p" });
    expect(all).toMatchObject({ item: "all items", lives: one!.lives });
    const ended = fleet.packs.filter(({ retired }) => retired !== null && retired > cuts[0]!).length;
    expect(one!.ends).toBe(ended);
    expect(one!.lives).toBe(ended);
    expect(one!.error!.mean).toBeLessThan(0.25);
    expect(Math.abs(one!.expectedEnds - one!.ends)).toBeLessThan(2);
    expect(one!.readings).toBe(
      fleet.runtimeTests.filter(
        ({ date, serial }) =>
          date > cuts[0]! && fleet.packs.some((row) => row.serial === serial && row.inService! <= cuts[0]!),
      ).length,
    );
  });

  it("lets nothing that came after the cut-off reach its forecast", () => {
    const cut = addMonths(asOf, -18);
    // the same past with another future: every test after the cut-off reads lower, and no pack was retired since
    const otherFuture: Fleet = {
      ...fleet,
      runtimeTests: fleet.runtimeTests.map((test) =>
        test.date > cut ? { ...test, percent: test.percent! - 9 } : test,
      ),
    };
    const one = prove(fleet, policy, [18]).scores[0]!;
    const other = prove(otherFuture, policy, [18]).scores[0]!;
    // lower readings end more packs sooner; what was expected of the same packs until the same day is unchanged
    expect(other.ends).toBeGreaterThanOrEqual(one.ends);
    expect(other.readings).toBe(one.readings);
    const gained = other.readingError! - one.readingError!;
    expect(gained).toBeGreaterThan(0.05);
    expect(gained).toBeLessThanOrEqual(0.09);
  });

  it("does not score a pack that was swapped under its serial since the cut-off", () => {
    const cut = addMonths(asOf, -18);
    const tests = [
      [cut - 400, 96, 60],
      [cut - 200, 93, 90],
      [cut - 20, 91, 120],
      [cut + 200, 99, 8],
      [cut + 400, 98, 35],
    ] as const;
    const before = prove(fleet, policy, [18]).scores[0]!;
    // the sheet's day in service is the old pack's, or the newer one's, ten days before the cut-off
    for (const inService of [cut - 700, cut - 10]) {
      const swapped: Fleet = {
        ...fleet,
        packs: [...fleet.packs, pack("SWAP", { item: "p", inService })],
        runtimeTests: [
          ...fleet.runtimeTests,
          ...tests.map(([date, percent, cycles]) => ({ ...percentTest("SWAP", date, percent), cycles })),
        ],
      };
      const after = prove(swapped, policy, [18]).scores[0]!;
      expect(after.readings).toBe(before.readings);
      expect(after.ends).toBe(before.ends);
    }
  });

  it("has nothing to say of a fleet without a past", () => {
    const { scores } = prove(emptyFleet(), policy, [12]);
    expect(scores).toHaveLength(1);
    expect(scores[0]).toMatchObject({ item: "all items", lives: 0, readings: 0 });
  });
});
