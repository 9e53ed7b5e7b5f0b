import { describe, expect, it } from "vitest";
import { itemBook } from "../../src/fleet/item-book.ts";
import { type CatalogueRow, emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { whoTakes } from "../../src/fleet/who-takes.ts";
import { catalogued, day, device, pack, stock } from "./make-rows.ts";

const asOf = day("2026-11-01");

function takersOf(fleet: Fleet, item: string): [string, number][] {
  const book = itemBook(fleet);
  return whoTakes(fleet, book, asOf)
    .takers(book.find(item))
    .map(({ key, units }) => [key, units]);
}

describe("whoTakes", () => {
  it("goes by device type where the catalogue says what an item fits", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("A1", { type: "Type A", duty: "x" }), device("B1", { type: "type b", duty: "x" })],
      catalogue: [catalogued("Pads", "pads", { fits: ["TYPE  B"], carriedBy: ["x"], perDevice: 2 })],
    };
    expect(takersOf(fleet, "pads")).toEqual([["b1", 2]]);
  });

  it("goes by duty without fits, and leaves devices out of service out", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [
        device("A1", { duty: "Ambulance" }),
        device("A2", { duty: "ambulance", retired: day("2025-01-01") }),
        device("A3", { duty: "ambulance", inService: day("2027-04-01") }),
        device("W1", { duty: "ward" }),
      ],
      catalogue: [catalogued("Paper", "paper", { carriedBy: ["ambulance"] })],
    };
    expect(takersOf(fleet, "Paper")).toEqual([
      ["a1", 1],
      ["a3", 1],
    ]);
  });

  it("goes by what like devices carry without both", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [
        device("A1", { type: "A" }),
        device("A2", { type: "A" }),
        device("A3", { type: "A", inService: day("2027-04-01") }),
        device("B1", { type: "B" }),
      ],
      packs: [
        pack("1", { item: "P", device: "A1" }),
        pack("2", { item: "P", device: "A1" }),
        pack("3", { item: "P", device: "a2" }),
        pack("4", { item: "P", device: "a2" }),
        pack("5", { item: "P", device: "B1", retired: day("2024-01-01") }),
      ],
    };
    expect(takersOf(fleet, "P")).toEqual([
      ["a1", 2],
      ["a2", 2],
      ["a3", 2],
    ]);
  });

  // By the rule: half of like devices make a habit of all, fewer do not
  it("goes by like devices only where half of them carry the item", () => {
    const devices = ["A1", "A2", "B1", "B2", "B3"].map((name) => device(name, { type: name[0]! }));
    const fleet = { ...emptyFleet(), devices, packs: ["A1", "B1"].map((at) => pack(at, { item: "P", device: at })) };
    expect(takersOf(fleet, "P").map(([key]) => key)).toEqual(["a1", "a2", "b1"]);
  });

  it("gives a device the first by name of items that serve as well and that its like carry alike", () => {
    const fits = ["A"];
    const fleet = {
      ...emptyFleet(),
      devices: [device("A1", { type: "A" })],
      catalogue: [catalogued("Two", "pads", { fits, alternatives: ["One"] }), catalogued("One", "pads", { fits })],
    };
    expect(takersOf(fleet, "One").map(([key]) => key)).toEqual(["a1"]);
    expect(takersOf(fleet, "Two")).toEqual([]);
  });

  it("gives a device one of several items that serve as well: what it carries, else what its like carry", () => {
    const fits = ["A"];
    const fleet = {
      ...emptyFleet(),
      devices: [1, 2, 3, 4].map((n) =>
        device(`A${n}`, { type: "A", inService: day(n === 4 ? "2027-01-01" : "2020-01-01") }),
      ),
      catalogue: [catalogued("Old", "pads", { fits }), catalogued("New", "pads", { fits, alternatives: ["old"] })],
      datedStock: [
        stock("Old", "2028-01-31", "A1"),
        stock("New", "2028-01-31", "A2"),
        stock("New", "2028-01-31", "A3"),
      ],
    };
    expect(takersOf(fleet, "Old").map(([key]) => key)).toEqual(["a1"]);
    expect(takersOf(fleet, "New").map(([key]) => key)).toEqual(["a2", "a3", "a4"]);
  });

  it("takes a device that only packs name for a device", () => {
    const fleet = { ...emptyFleet(), packs: [pack("1", { item: "P", device: "Van 7" })] };
    expect(takersOf(fleet, "P")).toEqual([["van 7", 1]]);
  });
});

describe("itemBook", () => {
  it("follows replaced_by to its end, and a circle back to where it started", () => {
    const fleet = {
      ...emptyFleet(),
      catalogue: [
        catalogued("A", "pads", { replacedBy: "B", fits: ["T"] }),
        catalogued("B", "pads", { replacedBy: "C" }),
        catalogued("C", "pads"),
        catalogued("X", "pads", { replacedBy: "Y" }),
        catalogued("Y", "pads", { replacedBy: "X" }),
      ],
    };
    const book = itemBook(fleet);
    expect(book.find("a").name).toBe("C");
    expect([...book.find("A").fits]).toEqual(["t"]);
    expect(book.find("x").name).toBe("X");
    expect(book.items.map((item) => item.name)).toEqual(["C", "X", "Y"]);
  });

  // A price for a box is none for a unit, and 8 of another currency are not less than 9
  it("takes the lowest price of a single unit, in the currency of the first that has one", () => {
    const priced = (supplier: string, price: string, facts: Partial<CatalogueRow> = {}) =>
      catalogued("Pads", "pads", { supplier, price, currency: "EUR", ...facts });
    const catalogue = [
      priced("A", "7", { pricePer: "box" }),
      priced("B", "12.50"),
      priced("C", "9"),
      priced("D", "8", { currency: "SEK" }),
    ];
    expect(itemBook({ ...emptyFleet(), catalogue }).find("pads")).toMatchObject({ price: "9", currency: "EUR" });
  });

  it("takes each fact from the first catalogue row that states it", () => {
    const fleet = {
      ...emptyFleet(),
      catalogue: [
        catalogued("A", "gel", { supplier: "one" }),
        catalogued("a ", "gel", { supplier: "two", openedDays: 90 }),
      ],
    };
    expect(itemBook(fleet).find("A").openedDays).toBe(90);
  });
});
