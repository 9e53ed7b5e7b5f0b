import { describe, expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { type PackEvidence, packEvidence } from "../../src/fade/evidence.ts";
import { chanceAt } from "../../src/fade/grid-chances.ts";
import { DRAWS, fitCurves } from "../../src/fade/item-fit.ts";
import { usualPrior } from "../../src/fade/item-prior.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { chancesBelow } from "../../src/fade/pack-outlook.ts";
import { emptyPosterior, packPosterior } from "../../src/fade/pack-posterior.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { updateTrust } from "../../src/fade/reading-trust.ts";
import { GRID_DAYS, GRID_SIZE } from "../../src/fade/time-grid.ts";
import { wearAhead } from "../../src/fade/wear-ahead.ts";
import { type Random, seededRandom } from "../../src/maths/random.ts";

const AGES = [0.7, 1.4, 2.2, 2.9, 3.6, 4.3, 5];

/** Seven packs that lose four percent a year, each at its own pace, tested every eight months. */
function fleet(random: Random): PackEvidence[] {
  return AGES.map((age) => {
    const pace = 0.04 * Math.exp(0.15 * random.normal());
    const readings: { years: number; useYears: number; capacity: number }[] = [];
    for (let years = 0.1; years <= age; years += 0.67) {
      readings.push({ years, useYears: years, capacity: 1 - pace * years + 0.01 * random.normal() });
    }
    return packEvidence(readings, []);
  });
}

function logPosterior(packs: readonly PackEvidence[], x: Float64Array): number {
  const tables = nodeTables(curveFromCoordinates(x));
  const posterior = emptyPosterior();
  let sum = 0;
  for (const value of x) sum -= 0.5 * value * value;
  for (const pack of packs) {
    packPosterior(pack, tables, posterior);
    sum += posterior.logLikelihood;
  }
  return sum;
}

/** A long random-walk Metropolis chain, one coordinate or all of them at a time: slow, simple and right in the limit. */
function longChain(packs: readonly PackEvidence[], steps: number, keep: number, random: Random): Float64Array[] {
  let x: Float64Array = new Float64Array(PRIORS.length);
  let log = logPosterior(packs, x);
  const kept: Float64Array[] = [];
  const burnIn = Math.floor(steps / 5);
  for (let step = 0; step < steps; step++) {
    const one = step % 3 === 0 ? -1 : Math.floor(random.uniform() * x.length);
    const moved = x.map((value, d) =>
      one < 0 ? value + 0.15 * random.normal() : d === one ? value + random.normal() : value,
    );
    const proposed = logPosterior(packs, moved);
    if (Math.log(random.uniform()) < proposed - log) {
      x = moved;
      log = proposed;
    }
    if (step >= burnIn && (step - burnIn) % Math.floor((steps - burnIn) / keep) === 0) kept.push(x);
  }
  return kept;
}

/** Years from now at which the average chance over curves reaches a level. */
function yearsTo(level: number, pack: PackEvidence, age: number, curves: readonly Float64Array[]): number {
  const tables = curves.map((x) => nodeTables(curveFromCoordinates(x)));
  const ahead = wearAhead({ momentAt: (day) => ({ years: age + day / 365.25, useYears: age + day / 365.25 }) }, 0);
  const chances = chancesBelow(pack, ahead, { tables }, 0.8, 0);
  for (let k = 0; k < GRID_SIZE; k++) {
    let mean = 0;
    for (let draw = 0; draw < tables.length; draw++) mean += chanceAt(chances, draw, k) / tables.length;
    if (mean >= level) return GRID_DAYS[k]! / 365.25;
  }
  return Infinity;
}

describe("fitCurves", () => {
  it("gives forecasts that a long Markov chain gives, to a fifth of their width", () => {
    const random = seededRandom(90);
    const packs = fleet(random);
    const ours = fitCurves(packs, usualPrior());
    expect(ours).toHaveLength(DRAWS);
    const chain = longChain(packs, 60_000, 400, random);
    packs.forEach((pack, i) => {
      const at = (level: number, curves: readonly Float64Array[]) => yearsTo(level, pack, AGES[i]!, curves);
      const width = at(0.9, chain) - at(0.1, chain);
      for (const level of [0.1, 0.5, 0.9]) {
        // the grid's own step is a seventh of the time ahead
        const step = 0.15 * at(level, chain);
        expect(Math.abs(at(level, ours) - at(level, chain)), `pack ${i} at ${level}`).toBeLessThanOrEqual(
          Math.max(width / 5, step),
        );
      }
    });
  });

  it("gives the same curves twice, and the prior where nothing was read", () => {
    // a fit sets the trust of the readings that it hears: each time the same packs anew
    const curves = () => fitCurves(fleet(seededRandom(91)).slice(0, 3), usualPrior());
    expect(curves()).toEqual(curves());
    const untold = fitCurves([packEvidence([], [])], usualPrior());
    const mean = untold.reduce((sum, x) => sum + x[2]!, 0) / untold.length;
    expect(Math.abs(mean)).toBeLessThan(0.25);
  });
});

describe("updateTrust", () => {
  it("loses trust in a reading far off its pack's curve, and in no other", () => {
    const [, , , , , pack] = fleet(seededRandom(92));
    const spoilt = packEvidence(
      [...pack!.years].map((years, j) => ({
        years,
        useYears: years,
        capacity: pack!.capacity[j]! - (j === 3 ? 0.12 : 0),
      })),
      [],
    );
    updateTrust(spoilt, [nodeTables(curveFromCoordinates(PRIORS.map(() => 0)))]);
    expect(spoilt.trust[3]!).toBeLessThan(0.2);
    for (const [j, trust] of spoilt.trust.entries()) if (j !== 3) expect(trust, `reading ${j}`).toBeGreaterThan(0.5);
  });
});
