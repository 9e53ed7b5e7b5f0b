import { expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { FLEETS, fleetOf, placesOfTruth, shareBetween, type TruePath } from "./fade-world.ts";

it("still holds seven of ten where the truth is another: square-root storage loss plus cycles, some knees, spoilt tests", () => {
  const random = seededRandom(1147);
  const places = Array.from({ length: FLEETS }, (_, i) => {
    const storage = 0.03 * Math.exp(0.3 * random.normal());
    const cycling = 0.018 * Math.exp(0.4 * random.normal());
    const knees = random.uniform() < 0.5;
    const pathOf = (): TruePath => {
      const pace = Math.exp(0.2 * random.normal());
      const start = 1 + 0.012 * random.normal();
      const onset = knees ? 3.5 * Math.exp(0.25 * random.normal()) : Infinity;
      return (age) =>
        start - pace * (storage * Math.sqrt(age) + cycling * age) - (age > onset ? 0.05 * (age - onset) ** 1.5 : 0);
    };
    const noiseOf = () => 0.012;
    const packs = fleetOf(pathOf, noiseOf, 0, () => 0, random);
    // one reading in thirty is spoilt by a wrong load or a test cut short
    for (const { evidence } of packs) {
      evidence.capacity.forEach((capacity, j) => {
        if (random.uniform() < 1 / 30) evidence.capacity[j] = capacity - 0.08;
      });
    }
    return placesOfTruth(packs, i);
  }).flat();
  const inside = shareBetween(places, 0.1, 0.9);
  console.log(`from another truth: ${places.length} packs, inside ${inside.toFixed(3)}`);
  expect(inside).toBeGreaterThanOrEqual(0.7);
}, 900_000);
