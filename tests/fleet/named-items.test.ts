import { describe, expect, it } from "vitest";
import { unnamedCautions, withNamedItems } from "../../src/fleet/named-items.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { catalogued, ordered, pack, routine, stock, use } from "./make-rows.ts";

const NONE = { ...emptyFleet(), packs: [pack("P1"), pack("P2"), pack("P3", { item: "pack-md" })] };

describe("packs without an item", () => {
  it("are one kind in all that follows, and the sheets' own rows stay as they are", () => {
    expect(withNamedItems(NONE).packs.map(({ item }) => item)).toEqual(["unnamed pack", "unnamed pack", "pack-md"]);
    expect(NONE.packs[0]!.item).toBeNull();
    expect(withNamedItems(NONE)).toBe(withNamedItems(NONE));
  });
  it("are told of by their count, and nothing is said where all are named", () => {
    expect(unnamedCautions(NONE)[0]).toMatch(/^2 packs have no item in the sheets/);
    expect(unnamedCautions(withNamedItems(NONE))[0]).toMatch(/^2 packs have no item/);
    const named = { ...emptyFleet(), packs: [pack("P3", { item: "pack-md" })] };
    expect(unnamedCautions(named)).toEqual([]);
    expect(withNamedItems(named)).toBe(named);
  });
});

describe("items that several sheets spell in their own way", () => {
  // By hand: the catalogue's spelling stands, and of gel, which is in none, the one first in order: capitals come first
  it("have one name in all that follows, without a change to rows that have it", () => {
    const fleet = {
      ...emptyFleet(),
      packs: [pack("P1", { item: "CELL-A" }), pack("P2", { item: "Cell-A" })],
      catalogue: [catalogued("Cell-A", "pack"), catalogued(" cell-a", "pack", { supplier: "North" })],
      datedStock: [stock("gel", "2028-01-31", "D1"), stock("GEL ", "2028-01-31", "D2")],
      useLog: [use("2026-01-31", "Gel", "D1")],
      onOrder: [ordered("cell-a", 2)],
      routine: [routine("Check", 12), routine("Check", 12, { item: "gel" })],
    };
    const { packs, catalogue, datedStock, useLog, onOrder, routine: tasks } = withNamedItems(fleet);
    const rows = [packs, catalogue, datedStock, useLog, onOrder, tasks];
    expect(rows.map((of) => of.map(({ item }) => item))).toEqual([
      ["Cell-A", "Cell-A"],
      ["Cell-A", "Cell-A"],
      ["GEL", "GEL"],
      ["GEL"],
      ["Cell-A"],
      [null, "GEL"],
    ]);
    expect(packs[1]).toBe(fleet.packs[1]);
    expect(fleet.packs[0]!.item).toBe("CELL-A");
  });
});
