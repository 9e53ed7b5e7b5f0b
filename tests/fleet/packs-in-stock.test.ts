import { describe, expect, it } from "vitest";
import { listedAsPack, packsAsInStock, useByDates } from "../../src/fleet/packs-in-stock.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { makePlan } from "../../src/plan.ts";
import { policyWith } from "../orders/made-up.ts";
import { catalogued, day, device, pack, stock } from "./make-rows.ts";

const fleet = {
  ...emptyFleet(),
  packs: [pack("B-1")],
  datedStock: [
    stock("Battery", "2029-06-30", "D1", { serial: "B-1" }),
    stock("Battery", "2028-06-30", "D1", { serial: " b-1 " }),
    stock("Battery", "2030-06-30", "D1", { serial: "B-1" }),
    stock("Battery", "2027-06-30", "D1"),
    stock("Battery", "2027-06-30", "D1", { serial: "B-2" }),
  ],
};

describe("a battery listed as a pack and in dated stock", () => {
  it("is known under its serial, however it is written", () => {
    expect(fleet.datedStock.map(listedAsPack(fleet))).toEqual([true, true, true, false, false]);
  });

  it("ends by the earliest of its dates", () => {
    expect([...useByDates(fleet)]).toEqual([
      ["b-1", day("2028-06-30")],
      ["b-2", day("2027-06-30")],
    ]);
  });
});

const held = "swollen";
const cell = (serial: string, expiry: string, place: string, reason: string | null = null, quantity = 1) =>
  stock("Cell", expiry, place, { serial, held: reason, quantity });

describe("what only dated stock tells of a pack", () => {
  it("is its device, where it is one, and why it is held; its own row goes first", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1")],
      packs: [
        pack("A"),
        pack("B", { device: "D9" }),
        pack("C", { held: "recalled" }),
        pack("D"),
        pack("E", { device: "D1" }),
      ],
      datedStock: [
        cell(" a", "2027-01-31", "d1 "),
        cell("A", "2027-02-28", "Store", held),
        cell("B", "2027-01-31", "D1", held),
        cell("C", "2027-01-31", "D9", held),
        cell("D", "2027-01-31", "D1", held, 0),
      ],
    };
    const packs = packsAsInStock(fleet);
    expect(packs.map(({ serial, device: at, held: why }) => [serial, at, why])).toEqual([
      ["A", "d1 ", held],
      ["B", "D9", held],
      ["C", "D9", "recalled"],
      ["D", null, null],
      ["E", "D1", null],
    ]);
    expect(packs.map((one, at) => one === fleet.packs[at])).toEqual([false, false, false, true, true]);
  });

  // By hand, as of 1 November 2026: P1 in D1 is swollen and counts as due at once; P2 sits in D2 until its date in May, and is
  // no spare; P3, swollen in the store, is none either. So two packs are needed within the year, and both are bought
  it("makes a need of a swollen or placed battery, and no spare", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2")],
      catalogue: [catalogued("Cell", "primary", { supplier: "North", price: "10", currency: "EUR", leadDays: 10 })],
      packs: ["P1", "P2", "P3"].map((serial) => pack(serial, { item: "Cell", device: serial === "P1" ? "D1" : null })),
      datedStock: [
        cell("P1", "2028-03-31", "D1", held),
        cell("p2", "2027-05-31", "D2"),
        cell("P3", "2028-05-31", "Store", held),
      ],
    };
    const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
    const plan = makePlan(reading, policyWith({ asOf: day("2026-11-01"), horizonMonths: 12 }));
    expect(
      plan.packs.map(({ serial, device: at, replaceBy }) => [serial, at, replaceBy.because, replaceBy.p50]),
    ).toEqual([
      ["P1", "D1", "held", "2026-11-01"],
      ["P2", "D2", "use-by", "2027-05-31"],
    ]);
    expect(plan.demand[0]!.causes.limit.map(Math.round)).toEqual([1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0]);
    expect(plan.orders.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(2);
    // nothing bought: D1 lacks a good pack at once, and D2 does from June on, being good to the end of 31 May
    expect(plan.short.map(({ withoutBuying }) => Math.round(withoutBuying.expected))).toEqual([
      1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2,
    ]);
  });
});
