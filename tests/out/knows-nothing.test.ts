import { describe, expect, it } from "vitest";
import { knowsNothing } from "../../src/out/knows-nothing.ts";
import { aPlan } from "./a-plan.ts";

/** A plan without orders, with one pack that has no forecast, and needs of none in every month. */
const UNREAD = (() => {
  const { packs, demand, datedStock } = aPlan();
  const none = { kind: "no-forecast" as const, p10: null, p50: null, p90: null, because: null, note: null };
  const nil = demand.map((row) => ({ ...row, mean: row.mean.map(() => 0) }));
  return { ...aPlan({ orders: [], packs: [{ ...packs[0]!, replaceBy: none }], demand: nil }), datedStock };
})();
const short = (devices: number) => [{ ...aPlan().short[0]!, devices }];

describe("knowsNothing", () => {
  it("is so where no pack has a forecast, no device has dated units and nothing is needed", () => {
    expect(knowsNothing({ ...UNREAD, datedStock: [], short: [] })).toBe(true);
  });
  it("a shelf's units alone tell nothing of what devices need", () => {
    expect(knowsNothing({ ...UNREAD, short: short(0) })).toBe(true);
    expect(knowsNothing({ ...UNREAD, short: [] })).toBe(true);
  });
  it("one device with dated units is something known, one device without is not", () => {
    expect(knowsNothing({ ...UNREAD, short: short(1) })).toBe(false);
    expect(knowsNothing({ ...UNREAD, datedStock: [], short: short(1) })).toBe(true);
  });
  it("a need in any one month, an order or a pack with a forecast is something known", () => {
    const { demand, orders, packs } = aPlan();
    const bare = { ...UNREAD, datedStock: [], short: [] };
    const once = demand.map((row) => ({ ...row, mean: row.mean.map((_, month) => (month === 3 ? 0.2 : 0)) }));
    expect(knowsNothing({ ...bare, demand: once })).toBe(false);
    expect(knowsNothing({ ...bare, orders })).toBe(false);
    expect(knowsNothing({ ...bare, packs: [...bare.packs, packs[0]!] })).toBe(false);
  });
});
