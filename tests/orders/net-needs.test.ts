import { describe, expect, it } from "vitest";
import { netNeeds } from "../../src/orders/net-needs.ts";
import { certainDemand } from "./made-up.ts";

const cumulative = (needs: readonly number[], supply: { from: number; to: number; units: number }[]) =>
  netNeeds(certainDemand("Gel", needs), supply, 0.95, 0).cumulative;

describe("what must be bought beyond the supply", () => {
  // By hand: the 2 on their way come after the 4 that month 1 needs and lapse before month 7: they serve nothing
  it("counts on nothing that comes after one month's needs and lapses before the next", () => {
    expect(cumulative([0, 4, 0, 0, 0, 0, 0, 2], [{ from: 2, to: 5, units: 2 }])).toEqual([0, 4, 4, 4, 4, 4, 4, 6]);
  });

  // By hand: of 5 that last, 3 serve month 7 and 2 are left over
  it("counts on what comes after one month's needs and lasts to the next", () => {
    expect(cumulative([0, 4, 0, 0, 0, 0, 0, 3], [{ from: 2, to: 7, units: 5 }])).toEqual([0, 4, 4, 4, 4, 4, 4, 4]);
    expect(cumulative([0, 4, 0, 0, 0, 0, 0, 7], [{ from: 2, to: 7, units: 5 }])).toEqual([0, 4, 4, 4, 4, 4, 4, 6]);
  });

  // By hand: 3 serve months 0 and 1, which need 2, and 1 lapses; month 3 is left with its 2
  it("counts on nothing that only serves months which need little", () => {
    expect(cumulative([1, 1, 0, 2], [{ from: 0, to: 2, units: 3 }])).toEqual([0, 0, 0, 2]);
  });
});
