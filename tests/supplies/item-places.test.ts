import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { itemPlaces } from "../../src/supplies/item-places.ts";
import { catalogued, day, device, routine, stock, use } from "../fleet/make-rows.ts";

const AS_OF = day("2026-11-25");
const policy = defaultPolicy(AS_OF);

function placesOf(item: string, fleet: Partial<Fleet>) {
  const { items } = itemPlaces({ ...emptyFleet(), ...fleet }, policy);
  const found = items.find(({ item: one }) => one.name === item)!;
  return found.places.map((place) => ({ ...place, held: found.units.unitsOf(place.stock) }));
}

describe("itemPlaces", () => {
  // By hand: a monitor carries 2 pads; one that comes in December has 1 there already, one of January none, one of today is
  // not new and lacks what the sheets do not have
  it("finds what a new device lacks on its first day", () => {
    const places = placesOf("Pads", {
      catalogue: [catalogued("Pads", "pads", { fits: ["Monitor"], perDevice: 2 })],
      devices: [
        ["D1", "2026-11-25"],
        ["D2", "2026-12-10"],
        ["D3", "2027-01-01"],
        ["D4", "2027-01-02"],
      ].map(([name, inService]) => device(name!, { type: "Monitor", inService: day(inService!) })),
      datedStock: [
        stock("Pads", "2028-01-31", "D1"),
        stock("Pads", "2028-01-31", "D2"),
        stock("Pads", "2028-01-31", "D4", { quantity: 3 }),
        stock("Pads", "2028-01-31", "Store", { quantity: 9 }),
      ],
    });
    expect(places.map(({ key, from, held, lacking }) => [key, from, held, lacking])).toEqual([
      ["d1", AS_OF, 1, 0],
      ["d2", day("2026-12-10"), 1, 1],
      ["d3", day("2027-01-01"), 0, 2],
      ["d4", day("2027-01-02"), 3, 0],
    ]);
  });

  // By hand: two tasks take 12 and 4 times half a roll a year of every device of the ward, 14 in all; of three places the
  // rolls are a sixth, a half and five sixths gone
  it("adds up what tasks take, and has the rolls of several places run out one after the other", () => {
    const places = placesOf("Roll", {
      catalogue: [catalogued("Roll", "paper", { carriedBy: ["ward"] })],
      devices: ["D1", "D2", "D3", "D4"].map((name) => device(name, { duty: name === "D4" ? "bag" : "ward" })),
      routine: [
        routine("check", 12, { item: "Roll", duty: " WARD " }),
        routine("long check", 4, { item: "roll", quantity: 0.5 }),
        routine("no item", 99, { duty: "ward" }),
      ],
    });
    expect(places.map(({ key, routinePerYear, routineStarted }) => [key, routinePerYear, routineStarted])).toEqual([
      ["d1", 14, 0.5 / 3],
      ["d2", 14, 0.5],
      ["d3", 14, 2.5 / 3],
    ]);
  });

  it("needs nothing at a device that has left, from one that leaves nothing from then on, and of a store what is logged", () => {
    const places = placesOf("Pads", {
      catalogue: [catalogued("Pads", "pads", { fits: ["Monitor"] })],
      devices: [
        device("Gone", { type: "Monitor", retired: AS_OF }),
        device("Going", { type: "Monitor", retired: AS_OF + 1 }),
      ],
      datedStock: ["Gone", "Going", "Store"].map((place) => stock("Pads", "2028-01-31", place)),
      useLog: [use("2026-06-01", "Pads", "Depot"), use("2026-06-01", "Pads", "Gone")],
    });
    expect(places.map(({ use: used, from, until }) => [used?.name, from, until])).toEqual([
      ["Going", AS_OF, AS_OF + 1],
      ["Depot", AS_OF, Infinity],
    ]);
  });
});
