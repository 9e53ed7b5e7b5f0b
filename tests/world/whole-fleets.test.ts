import { afterAll, expect, it } from "vitest";
import { PlayedWholeFleets } from "./played-whole-fleets.ts";

/** `npm run bench -- fleets` plays 200. */
const FLEETS = 2;
const played = new PlayedWholeFleets(FLEETS);

it("serves 99 of 100 needs at once for no more than 15 % above one who knows the future", () => {
  expect(played.of("replanned").fill).toBeGreaterThanOrEqual(0.99);
  expect(played.of("replanned").cost / played.of("oracle").cost).toBeLessThanOrEqual(1.15);
});

it("leaves 95 of 100 months without a shortage, re-planned or planned once", () => {
  expect(played.of("replanned").monthsWithout).toBeGreaterThanOrEqual(0.95);
  expect(played.of("once").monthsWithout).toBeGreaterThanOrEqual(0.95);
});

it("costs less than replacing packs at four years and reordering at two months' stock, at a better fill", () => {
  expect(played.of("replanned").cost).toBeLessThan(played.of("calendar").cost);
  expect(played.of("replanned").fill).toBeGreaterThan(played.of("calendar").fill);
});

afterAll(() => console.log(played.table()));
