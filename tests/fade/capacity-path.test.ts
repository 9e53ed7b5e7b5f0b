import { describe, expect, it } from "vitest";
import { capacityBands } from "../../src/fade/capacity-path.ts";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { packEvidence } from "../../src/fade/evidence.ts";
import { chanceAt } from "../../src/fade/grid-chances.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import type { PackClock } from "../../src/fade/pack-clock.ts";
import { chancesBelow } from "../../src/fade/pack-outlook.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { timeStretch } from "../../src/fade/time-stretch.ts";
import { wearAhead } from "../../src/fade/wear-ahead.ts";
import { seededRandom } from "../../src/maths/random.ts";

const random = seededRandom(40);
const tables = Array.from({ length: 40 }, () =>
  nodeTables(curveFromCoordinates(PRIORS.map(() => 0.4 * random.normal()))),
);
const stretch = timeStretch(40, 3);
/** Day 0 is as-of; the pack was made two years before. */
const clock: PackClock = {
  start: -730,
  cyclesPerYear: null,
  cyclesAt: () => null,
  momentAt: (day) => ({ years: (day + 730) / 365.25, useYears: (day + 730) / 365.25 }),
};
const evidence = packEvidence(
  [0.2, 0.9, 1.5, 1.9].map((years) => ({ years, useYears: years, capacity: 1 - 0.04 * years })),
  [],
);
const bandsOn = (days: number[]) => capacityBands(evidence, wearAhead(clock, 0), { tables, stretch }, days);

describe("capacityBands", () => {
  const months = Array.from({ length: 37 }, (_, m) => Math.round(m * 30.44));

  it("orders every band, and never rises once the early rise is over", () => {
    const bands = bandsOn(months);
    bands.forEach(({ p10, p50, p90 }, m) => {
      expect(p10).toBeLessThan(p50);
      expect(p50).toBeLessThan(p90);
      if (m > 0) expect(p50).toBeLessThanOrEqual(bands[m - 1]!.p50 + 1e-9);
    });
  });

  // By hand: four percent a year for two years leaves 92 %; four readings of noise 1.5 % leave it open by less than 1.5 %.
  it("starts where the readings are", () => {
    expect(Math.abs(bandsOn([0])[0]!.p50 - 0.92)).toBeLessThan(0.015);
  });

  it("is the same to half a percent of rated whether days are asked one by one or many at once, down to three fifths of rated", () => {
    const many = bandsOn(months);
    for (const m of [1, 2, 10, 22, 35]) {
      const one = bandsOn([months[m]!])[0]!;
      for (const level of ["p10", "p50", "p90"] as const) {
        // far below any end of life, where the knee takes percents a month, straight lines show
        if (one[level] > 0.6) expect(Math.abs(many[m]![level] - one[level])).toBeLessThan(0.005);
      }
    }
  });

  // of a plan as of a month's last day the month's end is today
  it("says of today the same twice where it is asked twice", () => {
    const [now, monthEnd, ...later] = bandsOn([0, ...months]);
    expect(monthEnd).toEqual(now);
    expect(Math.abs(now!.p50 - bandsOn([0])[0]!.p50)).toBeLessThan(0.001);
    for (const band of later) expect(Object.values(band).every((level) => level > 0 && level < 1.1)).toBe(true);
  });

  it("follows the early rise of new packs to half a percent, one by one and many at once", () => {
    const rising = tables.map(({ curve }) => nodeTables({ ...curve, earlyRise: 0.04, earlyYears: 0.1 }));
    const fresh: PackClock = {
      ...clock,
      start: 0,
      momentAt: (day) => ({ years: day / 365.25, useYears: day / 365.25 }),
    };
    const bands = (days: number[]) =>
      capacityBands(packEvidence([], []), wearAhead(fresh, 0), { tables: rising, stretch }, days);
    const many = bands(months);
    for (const m of [1, 2, 4, 5]) {
      const one = bands([months[m]!])[0]!;
      expect(Math.abs(many[m]!.p50 - one.p50), `month ${m}`).toBeLessThan(0.005);
    }
  });

  // The chance of being below a capacity comes of another sum, over times of crossing it: below a band's low edge it
  // is a tenth, below its middle a half. Of packs never tested every curve says something else: none may be left out.
  it("holds what the chances of being below say, also of a pack never tested", () => {
    const unlike = Array.from({ length: 200 }, () =>
      nodeTables(curveFromCoordinates(PRIORS.map(() => random.normal()))),
    );
    const fit = { tables: unlike, stretch: timeStretch(200, 3) };
    const untested = packEvidence([], []);
    const ahead = wearAhead(clock, 0);
    const now = capacityBands(untested, ahead, fit, [0])[0]!;
    const below = (capacity: number) => {
      const chances = chancesBelow(untested, ahead, fit, capacity, fit.stretch.own);
      return unlike.reduce((sum, _, c) => sum + chanceAt(chances, c, 0), 0) / unlike.length;
    };
    expect(Math.abs(below(now.p10) - 0.1)).toBeLessThan(0.02);
    expect(Math.abs(below(now.p50) - 0.5)).toBeLessThan(0.02);
  });
});
