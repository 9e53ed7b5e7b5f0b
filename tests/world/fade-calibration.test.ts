import { expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { MODEL_ERROR, PRIORS } from "../../src/fade/priors.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { FLEETS, fleetOf, pathFromModel, placesOfTruth, shareBetween } from "./fade-world.ts";

it("holds eight true ends of ten inside the 80 % interval where fleets are drawn from the model", () => {
  const random = seededRandom(4711);
  const places = Array.from({ length: FLEETS }, (_, i) => {
    const curve = curveFromCoordinates(PRIORS.map(() => random.normal()));
    const common = MODEL_ERROR.common * random.normal();
    const packs = fleetOf(
      () => pathFromModel(curve, random),
      () => curve.noise,
      common,
      () => MODEL_ERROR.own * random.normal(),
      random,
    );
    return placesOfTruth(packs, i);
  }).flat();
  const inside = shareBetween(places, 0.1, 0.9);
  const fifths = [0, 1, 2, 3, 4].map((k) => shareBetween(places, k / 5, (k + 1) / 5));
  console.log(
    `from the model: ${places.length} packs, inside ${inside.toFixed(3)}, fifths ${fifths.map((f) => f.toFixed(3))}`,
  );
  expect(inside).toBeGreaterThanOrEqual(0.76);
  expect(inside).toBeLessThanOrEqual(0.84);
  // packs of one fleet share its curve: the sampling error of a fifth is about 0.025
  for (const fifth of fifths) expect(Math.abs(fifth - 0.2)).toBeLessThan(0.06);
}, 900_000);
