import { describe, expect, it } from "vitest";
import { unnamedCautions, withNamedItems } from "../../src/fleet/named-items.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { catalogued, device, ordered, pack, routine, stock, use } from "./make-rows.ts";

const source = { file: "suppliers.csv", sheet: null, line: 2 };
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

describe("places and lots that several rows spell in their own way", () => {
  // By hand: a device is called as the devices sheet calls it; of another place, and of a lot, the spelling first in order
  // stands, capitals before small letters
  it("have one name in all that follows, whatever the order of the rows", () => {
    const rows = [
      stock("pads", "2028-01-31", "m1", { lot: "a1" }),
      stock("pads", "2028-01-31", "M1", { lot: "A1" }),
      stock("pads", "2028-01-31", "store", { lot: "B1" }),
      stock("pads", "2028-01-31", "Store"),
      stock("pads", "2028-01-31", null),
    ];
    const fleet = {
      ...emptyFleet(),
      devices: [device("m1")],
      packs: [pack("P1", { item: "cell", device: "M1" }), pack("P2", { item: "cell", device: "TR 9" })],
      useLog: [use("2026-01-31", "pads", "STORE"), use("2026-01-31", "pads", "tr 9")],
    };
    for (const datedStock of [rows, [...rows].reverse()]) {
      const named = withNamedItems({ ...fleet, datedStock });
      const told = named.datedStock.map(({ place, lot }) => `${place} ${lot}`);
      expect(told.sort()).toEqual(["STORE B1", "STORE null", "m1 A1", "m1 A1", "null null"]);
      expect(named.packs.map(({ device: at }) => at)).toEqual(["m1", "TR 9"]);
      expect(named.useLog.map(({ place }) => place)).toEqual(["STORE", "TR 9"]);
    }
  });

  // By hand: a supplier is called as the suppliers sheet calls it, and one that is not in it by the spelling first in order
  it("are told of suppliers, too, so that what is bought from one is one order", () => {
    const of = (supplier: string) => catalogued("pads", "pads", { supplier });
    const suppliers = [
      { supplier: "beta", orderFee: null, freeOver: null, orderEveryMonths: null, currency: null, source },
    ];
    const catalogue = [of("Beta"), of("alpha"), of("Alpha"), catalogued("pads", "pads")];
    const named = withNamedItems({
      ...emptyFleet(),
      suppliers,
      catalogue,
      onOrder: [ordered("pads", 1, { supplier: "ALPHA" })],
    });
    expect(named.catalogue.map(({ supplier }) => supplier)).toEqual(["beta", "ALPHA", "ALPHA", null]);
    expect(named.onOrder.map(({ supplier }) => supplier)).toEqual(["ALPHA"]);
  });

  it("stay the same rows where all spell them alike", () => {
    const datedStock = [stock("pads", "2028-01-31", "M1", { lot: "A1" })];
    const fleet = { ...emptyFleet(), devices: [device("M1")], datedStock };
    expect(withNamedItems(fleet)).toBe(fleet);
  });
});
