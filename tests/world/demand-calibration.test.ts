import { describe, expect, it } from "vitest";
import { type Random, seededRandom } from "../../src/maths/random.ts";
import { type DemandWorld, packWorld, padsWorld, placeOfTruth } from "./demand-world.ts";

const WORLDS = 200;
const BINS = 10;
/** Chi-square with 9 degrees of freedom exceeds this once in a hundred: NIST/SEMATECH e-Handbook, table 1.3.6.7.4. */
const CHI_SQUARE_9 = 21.666;
/** Of sqrt(n) times the largest distance from the diagonal, once in a hundred: Massey (1951), JASA 46, 68-78, n > 35. */
const KOLMOGOROV = 1.63;

describe.each<[string, (random: Random) => DemandWorld]>([
  ["few packs", (random) => packWorld(5 + Math.floor(40 * random.uniform()), random)],
  ["many packs", (random) => packWorld(220, random)],
  ["dated stock that is used", (random) => padsWorld(10 + Math.floor(30 * random.uniform()), random)],
])("needs where worlds are drawn from the model: %s", (name, world) => {
  const random = seededRandom(1);
  const worlds = Array.from({ length: WORLDS }, () => world(random));

  it.each([12, 24, 36])("lie flat in their forecast over %i months", (months) => {
    const places = worlds.map((one) => placeOfTruth(one, months, random));
    const chiSquare = chiSquareOf(places);
    const distance = Math.sqrt(WORLDS) * distanceFromDiagonal(places);
    console.log(`${name}, ${months} months: chi-square ${chiSquare.toFixed(1)}, Kolmogorov ${distance.toFixed(2)}`);
    expect(chiSquare).toBeLessThan(CHI_SQUARE_9);
    expect(distance).toBeLessThan(KOLMOGOROV);
  });
});

function binsOf(places: readonly number[]): number[] {
  const bins = new Array<number>(BINS).fill(0);
  for (const place of places) bins[Math.min(BINS - 1, Math.floor(BINS * place))]! += 1;
  return bins;
}

function chiSquareOf(places: readonly number[]): number {
  const expected = places.length / BINS;
  return binsOf(places).reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

function distanceFromDiagonal(places: readonly number[]): number {
  const n = places.length;
  return [...places]
    .sort((a, b) => a - b)
    .reduce((most, place, i) => Math.max(most, place - i / n, (i + 1) / n - place), 0);
}
