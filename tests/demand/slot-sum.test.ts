import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceOfNone, renewalDensity, stepsOf } from "../../src/demand/slot.ts";
import { addSlotSum, shapeSlot, VARIANCE_OF_A_NORMAL } from "../../src/demand/slot-sum.ts";
import { quantileOfCounts } from "../../src/maths/convolution.ts";
import { refinedNormalCdf } from "../../src/maths/refined-normal.ts";

function sumOf(chances: readonly number[]): Float64Array {
  const mixture = new Float64Array(chances.length + 2);
  const shapes = chances.map((p) => {
    const shape = { low: 0, chanceLow: 0, chanceHigh: 0 };
    shapeSlot(1 - p, p, shape);
    return shape;
  });
  addSlotSum(shapes, shapes.length, 1, mixture, new Float64Array(mixture.length));
  return mixture;
}

describe("addSlotSum: the Poisson-binomial distribution", () => {
  // By hand: 0.9 * 0.8 * 0.7 * 0.6 = 0.3024, and so on for one, two, three and four of four
  it("sums four unequal chances", () => {
    [0.3024, 0.4404, 0.2144, 0.0404, 0.0024].forEach((chance, n) => {
      expect(sumOf([0.1, 0.2, 0.3, 0.4])[n]).toBeCloseTo(chance, 14);
    });
  });
  // Source: exact convolution computed outside this project; mean 3.13, variance 1.1395
  it("sums ten unequal chances", () => {
    const exact = [
      0.00183324141, 0.0461228579325, 0.233358177395, 0.370646414945, 0.251090814645, 0.08207826685, 0.013671959755,
      0.001151706855, 0.000045802805, 7.534175e-7, 3.99e-9,
    ];
    const sum = sumOf([0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.35, 0.5, 0.8, 0.95]);
    exact.forEach((chance, n) => {
      expect(sum[n]).toBeCloseTo(chance, 13);
    });
    expect([0.5, 0.9, 0.95, 0.99].map((level) => quantileOfCounts(sum, level))).toEqual([3, 4, 5, 6]);
  });
  // Source: binomial distribution, n = 5, p = 0.3 (any table)
  it("is binomial where chances are equal", () => {
    [0.16807, 0.36015, 0.3087, 0.1323, 0.02835, 0.00243].forEach((chance, n) => {
      expect(sumOf([0.3, 0.3, 0.3, 0.3, 0.3])[n]).toBeCloseTo(chance, 14);
    });
  });
  it("keeps mean and total chance, whatever the chances", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 60 }), (chances) => {
        const sum = sumOf(chances);
        expect(sum.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        expect(sum.reduce((a, b, n) => a + b * n, 0)).toBeCloseTo(
          chances.reduce((a, b) => a + b, 0),
          7,
        );
      }),
      { seed: 5, numRuns: 100 },
    );
  });
});

/** Exact convolution, as long as it takes. */
function exactly(chances: readonly number[]): number[] {
  let pmf = [1];
  for (const p of chances) {
    const next = new Array<number>(pmf.length + 1).fill(0);
    pmf.forEach((chance, n) => {
      next[n] = next[n]! + chance * (1 - p);
      next[n + 1] = next[n + 1]! + chance * p;
    });
    pmf = next;
  }
  return pmf;
}

describe("refinedNormalCdf", () => {
  it("errs by less than 3e-4 where addSlotSum takes it, whatever the mix of chances", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.001, max: 0.999, noNaN: true }), { minLength: 50, maxLength: 400 }),
        fc.double({ min: 0.3, max: 8, noNaN: true }),
        (raw, power) => {
          const chances = raw.map((p) => p ** power);
          const mean = chances.reduce((a, p) => a + p, 0);
          const variance = chances.reduce((a, p) => a + p * (1 - p), 0);
          const third = chances.reduce((a, p) => a + p * (1 - p) * (1 - 2 * p), 0);
          const fourth = chances.reduce((a, p) => a + p * (1 - p) * (1 - 6 * p * (1 - p)), 0);
          fc.pre(variance >= VARIANCE_OF_A_NORMAL);
          let below = 0;
          let worst = 0;
          exactly(chances).forEach((chance, n) => {
            below += chance;
            worst = Math.max(worst, Math.abs(below - refinedNormalCdf(n, { mean, variance, third, fourth })));
          });
          expect(worst).toBeLessThan(3e-4);
        },
      ),
      { seed: 3, numRuns: 40, endOnFailure: true },
    );
  });
});

describe("chanceOfNone: one pack and its replacements", () => {
  const months = 6;
  const steps = (length: number) =>
    fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: length, maxLength: length });
  const upwards = (raw: number[]) => {
    let alive = 1;
    return raw.map((step) => {
      alive *= 1 - step / 2;
      return 1 - alive;
    });
  };

  /** Chance of each history of needs, by walking all of them. */
  function histories(due: number[], newDue: number[]): Map<string, number> {
    const found = new Map<string, number>();
    const walk = (needs: number[], chance: number) => {
      const entered = needs[needs.length - 1];
      let came = 0;
      for (let m = (entered ?? -1) + 1; m < months; m++) {
        const by = entered === undefined ? due[m]! : newDue[m - entered]!;
        if (by > came) walk([...needs, m], chance * (by - came));
        came = by;
      }
      found.set(needs.join(","), chance * (1 - came));
    };
    walk([], 1);
    return found;
  }

  it("gives the chance of no need and the mean exactly, as all histories counted one by one do", () => {
    fc.assert(
      fc.property(steps(months), steps(months), fc.integer({ min: -1, max: months - 2 }), (rawDue, rawNew, after) => {
        const due = upwards(rawDue);
        const newDue = [0, ...upwards(rawNew)];
        const density = new Float64Array(months);
        const chances = Float64Array.from(newDue);
        const newSteps = stepsOf(chances, months + 1);
        const slot = { due: Float64Array.from(due), at: 0, newDue: chances, newSteps, newAt: 0, end: months };
        renewalDensity(slot, months, density);
        for (let through = after + 1; through < months; through++) {
          let none = 0;
          let mean = 0;
          for (const [history, chance] of histories(due, newDue)) {
            const count = history
              .split(",")
              .filter((m) => m !== "" && Number(m) > after && Number(m) <= through).length;
            if (count === 0) none += chance;
            mean += chance * count;
          }
          expect(chanceOfNone(slot, density, after, through)).toBeCloseTo(none, 10);
          expect(density.slice(after + 1, through + 1).reduce((a, b) => a + b, 0)).toBeCloseTo(mean, 10);
        }
      }),
      { seed: 17, numRuns: 30 },
    );
  });
});
