import { describe, expect, it } from "vitest";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { itemsWithUseBy } from "../../src/life/dated-packs.ts";
import { day, pack, runtimeTest, stock } from "../fleet/make-rows.ts";

/** Packs of one item, the first so many with a use-by date. */
function fleetOf(packs: number, dated: number, more: Partial<Fleet> = {}): Fleet {
  const serials = Array.from({ length: packs }, (_, i) => `B-${i + 1}`);
  return {
    ...emptyFleet(),
    packs: serials.map((serial) => pack(serial, { item: "Cell" })),
    datedStock: serials.slice(0, dated).map((serial) => stock("Cell", "2029-06-30", null, { serial })),
    ...more,
  };
}

describe("itemsWithUseBy: batteries that do not recharge, by their dates", () => {
  it("is an item of which half the packs have a use-by date", () => {
    expect([...itemsWithUseBy(fleetOf(4, 2))]).toEqual(["cell"]);
    expect([...itemsWithUseBy(fleetOf(5, 2))]).toEqual([]);
    expect([...itemsWithUseBy(fleetOf(4, 0))]).toEqual([]);
  });
  it("is none of which a pack has cycles or a test", () => {
    const fleet = fleetOf(4, 4);
    expect([...itemsWithUseBy({ ...fleet, runtimeTests: [runtimeTest("b-2 ", day("2026-01-01"))] })]).toEqual([]);
    const counted = fleet.packs.map((one, i) => (i === 3 ? { ...one, cycles: 0 } : one));
    expect([...itemsWithUseBy({ ...fleet, packs: counted })]).toEqual([]);
  });
  it("is told for each item by itself", () => {
    const fleet = fleetOf(2, 2);
    const others = [pack("A", { item: "pack-md", cycles: 12 }), pack("X")];
    expect([...itemsWithUseBy({ ...fleet, packs: [...fleet.packs, ...others] })]).toEqual(["cell"]);
  });
});
