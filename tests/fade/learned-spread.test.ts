import { describe, expect, it } from "vitest";
import { DAYS_PER_YEAR } from "../../src/calendar/mean-year.ts";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { packEvidence } from "../../src/fade/evidence.ts";
import type { FadingPack } from "../../src/fade/items-with-evidence.ts";
import { learnedOwnSpread } from "../../src/fade/learned-spread.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { MODEL_ERROR, PRIORS, type PriorName } from "../../src/fade/priors.ts";
import { pack } from "../fleet/make-rows.ts";

const THRESHOLD = 0.8;
const SEED = 5;
/** A curve that is sure of a straight fade, in five years or so. */
const SURE: Partial<Record<PriorName, number>> = { slowPower: 1.33, powerSpread: -3, kneeShare: -2, lifeSpread: -1 };
const curve = curveFromCoordinates(PRIORS.map(({ name }) => SURE[name] ?? 0));
const fit = { tables: [nodeTables(curve)] };

interface Read {
  day: number;
  capacity: number;
  trust: number;
}

/** A pack made on day 0 and retired as faded after some years, with what was read of it. */
function completed(years: number, readings: readonly Read[]): FadingPack {
  const retired = Math.round(years * DAYS_PER_YEAR);
  const momentAt = (day: number) => ({ years: day / DAYS_PER_YEAR, useYears: day / DAYS_PER_YEAR });
  const evidence = packEvidence(
    readings.map(({ day, capacity }) => ({ ...momentAt(day), capacity })),
    [],
  );
  evidence.trust.set(readings.map(({ trust }) => trust));
  const clock = { start: 0, cyclesPerYear: null, cyclesAt: () => null, momentAt };
  const row = pack("x", { item: "p", made: 0, retired, retiredBecause: "faded" });
  return { pack: row, clock, evidence, readings: { readings } } as unknown as FadingPack;
}

/** Tests every half year on a straight line that meets the threshold after `fades` years, until the pack's end. */
function line(fades: number, ends = fades): Read[] {
  return Array.from({ length: Math.floor(ends * 2) }, (_, i) => {
    const years = (i + 1) / 2;
    const capacity = Math.max(THRESHOLD + 0.001, 1 - (0.2 * years) / fades);
    return { day: Math.round(years * DAYS_PER_YEAR), capacity, trust: 1 };
  });
}

const LIVES = [4, 4.5, 5, 5.5, 6, 6.5];

describe("learnedOwnSpread", () => {
  it("stays at the usual one until five lives are completed", () => {
    const four = LIVES.slice(0, 4).map((years) => completed(years, line(years)));
    expect(learnedOwnSpread(four, fit, THRESHOLD, SEED)).toBe(MODEL_ERROR.own);
  });

  it("is greater where packs ended far from where their tests led", () => {
    const straight = LIVES.map((years) => completed(years, line(years)));
    const bent = LIVES.map((years, i) => {
      const ends = (i % 2 === 0 ? 0.65 : 1.6) * years;
      return completed(ends, line(years, ends));
    });
    const learned = [straight, bent].map((packs) => learnedOwnSpread(packs, fit, THRESHOLD, SEED));
    expect(learned[1]).toBeGreaterThan(1.2 * learned[0]!);
  });

  it("dates no end by a test that the fit doubts, nor forecasts from it", () => {
    const plain = LIVES.map((years) => completed(years, line(years)));
    const spoilt = LIVES.map((years) => {
      const [first, ...later] = line(years);
      return completed(years, [first!, { day: first!.day + 100, capacity: 0.6, trust: 0.04 }, ...later]);
    });
    expect(learnedOwnSpread(spoilt, fit, THRESHOLD, SEED)).toBe(learnedOwnSpread(plain, fit, THRESHOLD, SEED));
  });
});
