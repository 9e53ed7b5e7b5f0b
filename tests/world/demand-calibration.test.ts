import { describe, expect, it } from "vitest";
import { type Random, seededRandom } from "../../src/maths/random.ts";
import { type DemandWorld, packWorld, padsWorld, placeOfTruth } from "./demand-world.ts";

/**
 * Worlds a seed; all seeds' worlds are judged together. The seeds are the first two and were not chosen: with one seed and
 * 18 checks at the usual 5 or 1 %, a right forecast would fail three times in five, or once in six.
 */
const WORLDS = 100;
const SEEDS = [1, 2];
const BINS = 10;
/**
 * Each of the 18 checks is at 0.1 %, so that a right forecast fails any of them with a chance of 1.8 % at the most
 * (Bonferroni). Chi-square with 9 degrees of freedom exceeds this once in a thousand: NIST/SEMATECH e-Handbook, table
 * 1.3.6.7.4 (from memory).
 */
const CHI_SQUARE_9 = 27.877;
/**
 * Of sqrt(n) times the largest distance from the diagonal, once in a thousand: Smirnov (1948), Table for estimating the
 * goodness of fit of empirical distributions, Annals of Mathematical Statistics 19, 279-281 (from memory).
 */
const KOLMOGOROV = 1.95;

describe.each<[string, (random: Random) => DemandWorld]>([
  ["few packs", (random) => packWorld(5 + Math.floor(40 * random.uniform()), random)],
  ["many packs", (random) => packWorld(220, random)],
  ["dated stock that is used", (random) => padsWorld(10 + Math.floor(30 * random.uniform()), random)],
])("needs where worlds are drawn from the model: %s", (name, world) => {
  const drawn = SEEDS.map((seed) => {
    const random = seededRandom(seed);
    return { random, worlds: Array.from({ length: WORLDS }, () => world(random)) };
  });

  it.each([12, 24, 36])("lie flat in their forecast over %i months", (months) => {
    const places = drawn.flatMap(({ random, worlds }) => worlds.map((one) => placeOfTruth(one, months, random)));
    const chiSquare = chiSquareOf(places);
    const distance = Math.sqrt(places.length) * distanceFromDiagonal(places);
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
