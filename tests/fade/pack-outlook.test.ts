import { describe, expect, it } from "vitest";
import { curveFromCoordinates, riseShare } from "../../src/fade/curve.ts";
import { type PackEvidence, packEvidence, wearAt } from "../../src/fade/evidence.ts";
import { chanceAt } from "../../src/fade/grid-chances.ts";
import { LOG_LIVES } from "../../src/fade/life-grid.ts";
import { type NodeTables, nodeTables, SHAPE_LEVELS } from "../../src/fade/node-tables.ts";
import { chancesBelow } from "../../src/fade/pack-outlook.ts";
import { KeptPosteriors } from "../../src/fade/posteriors-by-curve.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { GRID_DAYS, GRID_SIZE } from "../../src/fade/time-grid.ts";
import { wearAhead } from "../../src/fade/wear-ahead.ts";
import { normalCdf, normalQuantile } from "../../src/maths/normal.ts";
import { seededRandom } from "../../src/maths/random.ts";

const THRESHOLD = 0.8;
const OWN = 0.1;

/** Curves about as far apart as a fit to some hundred packs leaves them. */
const random = seededRandom(71);
const CURVES: NodeTables[] = Array.from({ length: 50 }, () =>
  nodeTables(curveFromCoordinates(PRIORS.map(() => 0.35 * random.normal()))),
);

/** A pack that loses four percent a year, tested every half year up to an age, by clocks that run at different paces. */
function packOf(age: number, perYear: number, everyYears: number): { evidence: PackEvidence; age: number } {
  const readings: { years: number; useYears: number; capacity: number }[] = [];
  for (let years = 0.2; years <= age; years += everyYears) {
    readings.push({ years, useYears: 1.2 * years, capacity: 1 - perYear * years + 0.01 * random.normal() });
  }
  return { evidence: packEvidence(readings, []), age };
}

/**
 * The average over curves by brute force: every node, the normal distribution of capacity at every time, and 41 paces
 * of time. Start and rise by least squares with their priors, written out as two equations. No formula of the code is
 * used.
 */
function byBruteForce({ evidence, age }: { evidence: PackEvidence; age: number }, days: number): number {
  const paces = Array.from({ length: 41 }, (_, i) => Math.exp(OWN * normalQuantile((i + 0.5) / 41)));
  let total = 0;
  for (const { curve, powers, logPrior, slow, knee } of CURVES) {
    const wears = [...evidence.years].map((years, j) =>
      wearAt({ years, useYears: evidence.useYears[j]! }, curve.useShare),
    );
    const rises = wears.map((s) => riseShare(s, curve.earlyYears));
    const [perNoise, perStart, perRise] = [curve.noise, curve.startSpread, curve.earlySpread].map((sd) => sd ** -2);
    const m11 = perStart! + perNoise! * rises.length;
    const m12 = perNoise! * rises.reduce((a, b) => a + b, 0);
    const m22 = perRise! + perNoise! * rises.reduce((a, r) => a + r * r, 0);
    const det = m11 * m22 - m12 * m12;
    const nodes: { log: number; start: number; rise: number; node: number }[] = [];
    for (let node = 0; node < LOG_LIVES.length * SHAPE_LEVELS; node++) {
      const p = powers.slowPowers[Math.floor(node / LOG_LIVES.length)]!;
      const lossAt = (s: number) => slow[node]! * s ** p + knee[node]! * s ** curve.kneePower;
      const y = wears.map((s, j) => evidence.capacity[j]! + lossAt(s));
      const v1 = perStart! * curve.startCapacity + perNoise! * y.reduce((a, b) => a + b, 0);
      const v2 = perRise! * curve.earlyRise + perNoise! * y.reduce((a, b, j) => a + b * rises[j]!, 0);
      const start = (m22 * v1 - m12 * v2) / det;
      const rise = (m11 * v2 - m12 * v1) / det;
      const misfit =
        perStart! * (start - curve.startCapacity) ** 2 +
        perRise! * (rise - curve.earlyRise) ** 2 +
        perNoise! * y.reduce((a, b, j) => a + (b - start - rise * rises[j]!) ** 2, 0);
      nodes.push({ log: logPrior[node]! - misfit / 2, start, rise, node });
    }
    const best = Math.max(...nodes.map(({ log }) => log));
    const all = nodes.reduce((sum, { log }) => sum + Math.exp(log - best), 0);
    for (const pace of paces) {
      const later = age + (days * pace) / 365.25;
      const s = wearAt({ years: later, useYears: 1.2 * later }, curve.useShare);
      const r = riseShare(s, curve.earlyYears);
      const sd = Math.sqrt((m22 - 2 * r * m12 + r * r * m11) / det);
      for (const { log, start, rise, node } of nodes) {
        if (log < best - 14) continue;
        const p = powers.slowPowers[Math.floor(node / LOG_LIVES.length)]!;
        const capacity = start + r * rise - slow[node]! * s ** p - knee[node]! * s ** curve.kneePower;
        total += (Math.exp(log - best) / all) * normalCdf((THRESHOLD - capacity) / sd);
      }
    }
  }
  return total / CURVES.length / 41;
}

describe("chancesBelow", () => {
  it.each([
    ["never tested", packOf(1, 0.04, 99)],
    ["tested once, long ago", packOf(3, 0.04, 5)],
    ["tested six times, in midlife", packOf(3, 0.04, 0.5)],
    ["tested often, fading slowly", packOf(5, 0.02, 0.25)],
    ["near the threshold", packOf(4.4, 0.042, 0.5)],
    ["about to cross", packOf(4.8, 0.042, 0.25)],
  ])("is what brute force gives, for a pack %s", (_, pack) => {
    const ahead = wearAhead(
      { momentAt: (day) => ({ years: pack.age + day / 365.25, useYears: 1.2 * (pack.age + day / 365.25) }) },
      0,
    );
    const chances = chancesBelow(pack.evidence, ahead, { tables: CURVES }, THRESHOLD, OWN);
    let worst = 0;
    for (let k = 0; k < GRID_SIZE - 1; k += 6) {
      let ours = 0;
      for (let c = 0; c < CURVES.length; c++) ours += chanceAt(chances, c, k) / CURVES.length;
      worst = Math.max(worst, Math.abs(ours - byBruteForce(pack, GRID_DAYS[k]!)));
    }

    expect(worst).toBeLessThan(0.002);
  });

  it("is the same by posteriors that were kept, at any threshold", () => {
    const kept = new KeptPosteriors();
    const packs = [packOf(3, 0.04, 0.5), packOf(1, 0.04, 99)];
    const clock = { momentAt: (day: number) => ({ years: 3 + day / 365.25, useYears: 3 + day / 365.25 }) };
    const ahead = wearAhead(clock, 0);
    for (const threshold of [0.8, 0.7, 0.8]) {
      for (const { evidence } of packs) {
        const anew = chancesBelow(evidence, ahead, { tables: CURVES }, threshold, OWN);
        const again = chancesBelow(evidence, ahead, { tables: CURVES }, threshold, OWN, kept.of(evidence, CURVES));
        expect(again).toEqual(anew);
      }
    }
  });
});
