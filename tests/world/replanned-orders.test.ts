import { afterAll, describe, expect, it } from "vitest";
import { WORLDS } from "./order-worlds.ts";
import { PlayedFleets } from "./played-fleets.ts";

/** `npm run bench -- worlds` plays 200. */
const FLEETS = 60;
const played = new PlayedFleets(FLEETS);

describe.each(WORLDS)("orders for two years: %s", (kind) => {
  // the service level is 0.95 a cycle; a cycle is a month or longer
  it("re-planned every month leave 95 of 100 months without a shortage, and serve 99 of 100 needs at once", () => {
    expect(played.ofKind("replanned", kind).monthsWithout).toBeGreaterThanOrEqual(0.95);
    expect(played.ofKind("replanned", kind).fill).toBeGreaterThanOrEqual(0.99);
  });

  it("planned once leave 95 of 100 months without a shortage", () => {
    expect(played.ofKind("once", kind).monthsWithout).toBeGreaterThanOrEqual(0.95);
  });

  // buying again what is on order would cost far more
  it("re-planned every month cost no more than 15 % above one who knows the future", () => {
    expect(played.ofKind("replanned", kind).cost / played.ofKind("oracle", kind).cost).toBeLessThanOrEqual(1.15);
  });
});

describe("whole fleets for two years", () => {
  it("cost less when re-planned than by the calendar, at a better fill", () => {
    expect(played.ofFleets("replanned").cost).toBeLessThan(played.ofFleets("calendar").cost);
    expect(played.ofFleets("replanned").fill).toBeGreaterThan(played.ofFleets("calendar").fill);
  });
});

afterAll(() => console.log(played.table()));
