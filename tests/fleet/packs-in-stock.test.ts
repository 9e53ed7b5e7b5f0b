import { describe, expect, it } from "vitest";
import { listedAsPack, useByDates } from "../../src/fleet/packs-in-stock.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { day, pack, stock } from "../fleet/make-rows.ts";

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
