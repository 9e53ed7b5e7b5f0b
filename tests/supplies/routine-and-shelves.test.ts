import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, routine, stock } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));

describe("forecastDatedStock: routine", () => {
  it("sends a task with a duty to that duty, one without to the devices that take the item", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("A1", { duty: "ambulance" }), device("W1", { duty: "ward" })],
      catalogue: [catalogued("Paper", "paper", { carriedBy: ["ambulance"] })],
      routine: [
        routine("shift check", 365, { item: "paper", quantity: 0.01 }),
        routine("yearly check", 1, { item: "Paper", duty: "Ward" }),
        routine("cycles only", 12, { cycles: 1 }),
      ],
    };
    const places = forecastDatedStock(fleet, policy).needing.items[0]!.places;
    expect(places.map((place) => [place.key, place.routinePerYear])).toEqual([
      ["a1", 3.65],
      ["w1", 1],
    ]);
  });

  // By hand: a task a month takes six units in half a year; of eight in the store the six that lapse first serve it
  it("lets a store's units serve what tasks take, up to their last day", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1")],
      datedStock: [
        stock("Gel", "2026-10-01", "D1", { held: "recall" }),
        stock("Gel", "2027-05-15", "Store", { quantity: 4 }),
        stock("Gel", "2027-05-15", "Store", { quantity: 4, lot: "B" }),
      ],
      routine: [routine("check", 12, { item: "Gel" })],
    };
    const { chanceUsed } = forecastDatedStock(fleet, policy).needing.stock;
    // the unit held in the device is one need more
    expect(4 * (chanceUsed[1]! + chanceUsed[2]!)).toBeCloseTo(7, 9);
  });

  // By hand: the first of six tasks takes the device's unit, which thus never lapses; six of eight units of the store replace
  it("does not have a unit that is used replaced once more on its swap day", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1")],
      datedStock: [stock("Gel", "2027-03-31", "D1"), stock("Gel", "2027-05-15", "Store", { quantity: 8 })],
      routine: [routine("check", 12, { item: "Gel" })],
    };
    const { chanceUsed } = forecastDatedStock(fleet, policy).needing.stock;
    expect(chanceUsed[0]).toBe(1);
    expect(8 * chanceUsed[1]!).toBeCloseTo(6, 9);
  });

  // By hand: 10,000 tasks of 1000 units a year take a unit every three seconds, so that all lasts less than three minutes
  it("comes to an end where tasks ask for millions of units a year", () => {
    const devices = Array.from({ length: 20 }, (_, at) => device(`D${at}`));
    const { needing, moves } = forecastDatedStock(
      {
        ...emptyFleet(),
        devices,
        datedStock: [
          ...devices.map(({ device }) => stock("Pads", "2036-06-30", device, { quantity: 2 })),
          stock("Pads", "2036-06-30", "D0", { quantity: 100 }),
          stock("Pads", "2036-06-30", "Store", { quantity: 50 }),
        ],
        routine: [routine("check", 10_000, { item: "Pads", quantity: 1000 })],
      },
      policy,
    );
    expect(moves).toEqual([]);
    expect(new Set(needing.stock.chanceUsed)).toEqual(new Set([1]));
  });
});
