import { describe, expect, it } from "vitest";
import { netNeeds } from "../../src/orders/net-needs.ts";
import type { SupplySpan } from "../../src/orders/supply-spans.ts";
import { certainDemand } from "./made-up.ts";

const cumulative = (needs: readonly number[], supply: SupplySpan[]) =>
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

  // By hand: what comes in month 2, sooner than anything ordered now, lapses with it. Month 1 takes the store's 5, and what it
  // needs beside them waits for month 2; month 4 is left with nothing.
  it("uses what is on its way for no need before it arrives, and lets that wait which nothing can meet sooner", () => {
    const supply = [
      { from: 0, to: 5, units: 5 },
      { from: 0, to: 2, units: 4, arrives: 2 },
    ];
    expect(cumulative([0, 5, 0, 0, 3, 0], supply)).toEqual([0, 0, 0, 0, 3, 3]);
    expect(cumulative([0, 8, 0, 0, 3, 0], supply)).toEqual([0, 0, 0, 0, 3, 3]);
    // of 11 two more can only be bought
    expect(cumulative([0, 11, 0, 0, 3, 0], supply)).toEqual([0, 2, 2, 2, 5, 5]);
  });

  // By hand: 3 serve months 0 and 1, which need 2, and 1 lapses; month 3 is left with its 2
  it("counts on nothing that only serves months which need little", () => {
    expect(cumulative([1, 1, 0, 2], [{ from: 0, to: 2, units: 3 }])).toEqual([0, 0, 0, 2]);
  });
});
