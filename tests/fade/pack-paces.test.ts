import { describe, expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { packEvidence } from "../../src/fade/evidence.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { paceTeller, SHIFTS } from "../../src/fade/pack-paces.ts";
import { packLogLikelihood } from "../../src/fade/pack-posterior.ts";
import { PRIORS } from "../../src/fade/priors.ts";

/** Hardness bears on no knee at the prior's middle, so that a shift of the median life moves nothing but lives. */
const CURVE = curveFromCoordinates(new Float64Array(PRIORS.length));
const read = (years: number, capacity: number) => ({ years, useYears: years, capacity });

const PACKS = {
  "that has hardly worn": packEvidence([read(0.5, 1.01), read(1, 1)], []),
  "that has worn fast": packEvidence([read(0.5, 0.97), read(1.2, 0.9), read(2, 0.82)], []),
  "that was retired": packEvidence([read(1, 0.9)], [{ years: 2, useYears: 2, threshold: 0.8, below: true }]),
};

describe("paceTeller", () => {
  const tell = paceTeller([nodeTables(CURVE)]);

  // If all packs of a kind wear e^shift times as fast, the median of their lives is e^shift times as short: the
  // likelihood of the readings under that curve, against the item's, is what they say of the shift.
  it.each(Object.entries(PACKS))("says of a shift what a curve of shorter lives says: of a pack %s", (_, evidence) => {
    const [logs] = tell(evidence).ifFaster;
    const likelihood = (shift: number) =>
      packLogLikelihood(evidence, nodeTables({ ...CURVE, logMedianLife: CURVE.logMedianLife - shift }));
    SHIFTS.forEach((shift, k) => {
      // lives of less than e^-10 of the best's chance were left out, of which some matter after the farthest shifts
      if (k % 5 === 0) expect(Math.abs(logs![k]! - likelihood(shift) + likelihood(0))).toBeLessThan(0.1);
    });
    expect(logs![SHIFTS.indexOf(0)]).toBeCloseTo(0, 9);
  });

  it("tells chances of paces that add up to one, higher for a pack that has worn more", () => {
    const mean = (name: keyof typeof PACKS) =>
      tell(PACKS[name]).chances.reduce((sum, part) => sum + part.chance * part.mean, 0);
    const total = tell(PACKS["that was retired"]).chances.reduce((sum, { chance }) => sum + chance, 0);
    expect(total).toBeCloseTo(1, 9);
    expect(mean("that has worn fast")).toBeGreaterThan(mean("that has hardly worn") + 0.3);
  });
});
