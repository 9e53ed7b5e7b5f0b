import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveFromCoordinates, FADE_SCALE, riseShare } from "../../src/fade/curve.ts";
import { packEvidence, wearAt } from "../../src/fade/evidence.ts";
import { LOG_LIVES } from "../../src/fade/life-grid.ts";
import { nodeTables, SHAPE_LEVELS } from "../../src/fade/node-tables.ts";
import { emptyPosterior, packPosterior } from "../../src/fade/pack-posterior.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { normalCdf, normalDensity } from "../../src/maths/normal.ts";

const readings = [
  { years: 0.1, useYears: 0.2, capacity: 1.01 },
  { years: 1, useYears: 1.4, capacity: 0.965 },
  { years: 2, useYears: 2.5, capacity: 0.93 },
  { years: 3.1, useYears: 3.9, capacity: 0.885 },
];
const bounds = [
  { years: 3.6, useYears: 4.4, threshold: 0.8, below: false },
  { years: 4.9, useYears: 6, threshold: 0.8, below: true },
];

/** The same by brute force: every node, start capacity and early rise in small steps. No formula of the code is used. */
function byBruteForce(evidence: ReturnType<typeof packEvidence>, tables: ReturnType<typeof nodeTables>) {
  const { curve, powers, logPrior, slow, knee } = tables;
  const steps = 90;
  const points = Array.from({ length: steps }, (_, i) => -6.5 + (13 * (i + 0.5)) / steps);
  const moments = [...evidence.years].map((years, j) =>
    wearAt({ years, useYears: evidence.useYears[j]! }, curve.useShare),
  );
  let total = 0;
  let life = 0;
  for (let node = 0; node < logPrior.length; node++) {
    const power = powers.slowPowers[Math.floor(node / LOG_LIVES.length)]!;
    const lossAt = (s: number) => slow[node]! * s ** power + knee[node]! * s ** curve.kneePower;
    const losses = moments.map(lossAt);
    const rises = moments.map((s) => riseShare(s, curve.earlyYears));
    const ends = evidence.bounds.map((bound) => {
      const s = wearAt(bound, curve.useShare);
      return { ...bound, loss: lossAt(s), rise: riseShare(s, curve.earlyYears) };
    });
    let sum = 0;
    for (const a of points) {
      for (const b of points) {
        const start = curve.startCapacity + curve.startSpread * a;
        const early = curve.earlyRise + curve.earlySpread * b;
        let density = normalDensity(a) * normalDensity(b) * (13 / steps) ** 2;
        for (let j = 0; j < losses.length; j++) {
          const expected = start + early * rises[j]! - losses[j]!;
          density *= normalDensity((evidence.capacity[j]! - expected) / curve.noise) / curve.noise;
        }
        for (const { threshold, below, loss, rise } of ends) {
          const z = (threshold - start - early * rise + loss) / curve.noise;
          density *= normalCdf(below ? z : -z);
        }
        sum += density;
      }
    }
    const mass = Math.exp(logPrior[node]!) * sum;
    total += mass;
    life += mass * LOG_LIVES[node % LOG_LIVES.length]!;
  }
  return { logLikelihood: Math.log(total), meanLogLife: life / total };
}

const typical = curveFromCoordinates(PRIORS.map(() => 0));
const leaning = curveFromCoordinates([
  0.3, -0.5, 0.4, 0.7, -0.6, 0.5, 0.3, 0.2, -0.3, 0.9, 0.5, -0.6, 0.4, -0.4, 0.6, 0.3, -0.5,
]);

describe("packPosterior: start capacity and early rise integrated out in closed form", () => {
  it.each([
    ["a typical curve", typical],
    ["another curve", leaning],
  ])("equals numerical integration with readings alone, for %s", (_, curve) => {
    const tables = nodeTables(curve);
    const posterior = emptyPosterior();
    const evidence = packEvidence(readings, []);
    packPosterior(evidence, tables, posterior);
    const brute = byBruteForce(evidence, tables);
    expect(posterior.logLikelihood).toBeCloseTo(brute.logLikelihood, 3);
    let meanLogLife = 0;
    for (let i = 0; i < posterior.count; i++) {
      meanLogLife += posterior.chance[i]! * LOG_LIVES[posterior.nodes[i]! % LOG_LIVES.length]!;
    }
    expect(meanLogLife).toBeCloseTo(brute.meanLogLife, 3);
  });

  // one bound alone is exact; of two the second takes the start capacity as if it did not know of the first
  it.each(bounds)("equals numerical integration with a one-sided reading too", (bound) => {
    const tables = nodeTables(typical);
    const posterior = emptyPosterior();
    const evidence = packEvidence(readings, [bound]);
    packPosterior(evidence, tables, posterior);
    expect(posterior.logLikelihood).toBeCloseTo(byBruteForce(evidence, tables).logLikelihood, 3);
  });

  it("is the prior where nothing was measured", () => {
    const posterior = emptyPosterior();
    packPosterior(packEvidence([], []), nodeTables(typical), posterior);
    expect(posterior.logLikelihood).toBeCloseTo(0, 2);
    expect(Math.sqrt(posterior.spread.startVariance)).toBeCloseTo(typical.startSpread, 12);
    expect(Math.sqrt(posterior.spread.riseVariance)).toBeCloseTo(typical.earlySpread, 12);
    expect(posterior.spread.covariance).toBeCloseTo(0, 12);
  });

  it("does not hang on the order of readings", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(readings, { minLength: 4 }), (shuffled) => {
        const tables = nodeTables(leaning);
        const one = emptyPosterior();
        const two = emptyPosterior();
        packPosterior(packEvidence(readings, []), tables, one);
        packPosterior(packEvidence(shuffled, []), tables, two);
        expect(two.logLikelihood).toBeCloseTo(one.logLikelihood, 9);
      }),
      { seed: 5, numRuns: 20 },
    );
  });

  it("spreads its nodes' prior over the whole of life", () => {
    for (const curve of [typical, leaning]) {
      const { powers, logPrior, slow, knee } = nodeTables(curve);
      expect(logPrior).toHaveLength(LOG_LIVES.length * SHAPE_LEVELS);
      // what is missing are lives under two months or over sixty years
      expect(Math.abs(1 - logPrior.reduce((sum, log) => sum + Math.exp(log), 0))).toBeLessThan(0.005);
      // by definition: a pack has lost FADE_SCALE after one life, whatever the knee's share
      for (let node = 0; node < logPrior.length; node += 37) {
        const life = Math.exp(LOG_LIVES[node % LOG_LIVES.length]!);
        const power = powers.slowPowers[Math.floor(node / LOG_LIVES.length)]!;
        const loss = slow[node]! * life ** power + knee[node]! * life ** curve.kneePower;
        expect(loss).toBeCloseTo(FADE_SCALE, 10);
      }
    }
  });
});
