import { describe, expect, it } from "vitest";
import { itemBook, itemNames } from "../../src/fleet/item-book.ts";
import { type CatalogueRow, emptyFleet } from "../../src/fleet/rows.ts";
import { catalogued, pack, stock } from "./make-rows.ts";

const fleetOf = (...catalogue: CatalogueRow[]) => ({ ...emptyFleet(), catalogue });
const sold = (item: string, supplier: string | null, facts: Partial<CatalogueRow> = {}) =>
  catalogued(item, "pads", { supplier, ...facts });

describe("the items of a fleet", () => {
  // By hand: of a catalogue's spellings that of the supplier first by name stands, one without a name before all; a name that
  // stands in replaced_by alone is spelled as that supplier spells it, too
  it("are called the same whatever the order of rows", () => {
    const rows = [
      sold("PADS", "Beta", { replacedBy: "New Pads" }),
      sold("Pads", "Alpha", { replacedBy: "NEW PADS" }),
      sold("gel", "Alpha"),
      sold("Gel", null),
    ];
    for (const catalogue of [rows, [...rows].reverse()]) {
      const names = itemNames({ ...fleetOf(...catalogue), datedStock: [stock("pads", "2027-01-31", "M1")] });
      expect(Object.fromEntries(names)).toEqual({ pads: "Pads", gel: "Gel", "new pads": "NEW PADS" });
    }
  });

  // By hand: A is bought as C, over B; D and E name each other, and so nothing replaces either, nor what comes to them
  it("follow what replaces them to its end, and no circle", () => {
    const replaced = { A: "b", b: "C", D: "E", E: "d", F: "D" };
    const rows = Object.entries(replaced).map(([item, replacedBy]) => sold(item, null, { replacedBy }));
    const book = itemBook(fleetOf(...rows));
    const bought = ["a", "B ", "c", "D", "e", "F", "G"].map((name) => book.find(name).key);
    expect(bought).toEqual(["c", "c", "c", "d", "e", "f", "g"]);
    expect(book.items.map(({ name }) => name)).toEqual(["C", "D", "E", "F"]);
  });

  // By hand: devices that took the old pads take the new; what the old cost, and how long it kept, says nothing of the new
  it("take from what they replace who takes them, not their prices and lives", () => {
    const old = {
      replacedBy: "new",
      price: "3.00",
      currency: "EUR",
      shelfMonths: 24,
      leadDays: 5,
      arrivesWithMonths: 20,
    };
    const book = itemBook(
      fleetOf(sold("old", "Alpha", { ...old, fits: ["Monitor"], perDevice: 2, openedDays: 30 }), sold("new", "Alpha")),
    );
    expect(book.find("OLD")).toMatchObject({
      ...{ key: "new", name: "new", kind: "pads", perDevice: 2, openedDays: 30, fits: new Set(["monitor"]) },
      ...{ price: null, currency: null, shelfMonths: null, leadDays: null, arrivesWithMonths: null },
    });
  });

  // By hand: of two that it replaces the first by name tells what the new item does not
  it("take what several of those tell from the first by name, whatever the order of rows", () => {
    const old = (name: string, perDevice: number) => sold(name, "Alpha", { replacedBy: "new", perDevice });
    expect(itemBook(fleetOf(old("old-2", 3), old("old-1", 2))).find("new").perDevice).toBe(2);
    expect(itemBook(fleetOf(old("old-1", 2), old("old-2", 3))).find("new").perDevice).toBe(2);
  });

  // By hand: 9.50 is the least of 10.00, 9.50 and 11.00 euros; a box's 2.00 is no unit's price, crowns are another currency, and
  // nought is what nobody has filled in
  it("cost the least that a supplier takes for one unit, in one currency", () => {
    const book = itemBook(
      fleetOf(
        sold("pads", "Alpha", { price: "10.00" }),
        sold("pads", "Beta", { price: "9.50", currency: "EUR" }),
        sold("pads", "Cara", { price: "2.00", currency: "EUR", pricePer: "box" }),
        sold("pads", "Dora", { price: "1.00", currency: "SEK" }),
        sold("pads", "Cleo", { price: "0", currency: "EUR" }),
        sold("pads", "Ella", { price: "11.00", currency: "EUR", pricePer: "unit" }),
      ),
    );
    expect(book.find("pads")).toMatchObject({ price: "9.50", currency: "EUR" });
  });

  // By hand: what is bought in place of an alternative serves as well; nothing serves in place of itself
  it("have as alternatives what is bought of them now, and never themselves", () => {
    const book = itemBook(
      fleetOf(
        sold("pads", "Alpha", { alternatives: ["OLD", "pads ", "elder"] }),
        sold("old", "Alpha", { replacedBy: "new" }),
        sold("elder", "Alpha", { replacedBy: "pads" }),
      ),
    );
    expect(book.find("pads").alternatives).toEqual(new Set(["new"]));
  });

  it("are all that a sheet names, packs without an item apart", () => {
    const fleet = { ...emptyFleet(), packs: [pack("P1"), pack("P2", { item: "Cell" })] };
    expect(itemBook(fleet, ["Extra"]).items.map(({ name, kind }) => [name, kind])).toEqual([
      ["Cell", null],
      ["Extra", null],
    ]);
    expect(itemBook(emptyFleet()).items).toEqual([]);
  });
});
