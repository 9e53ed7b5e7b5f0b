import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { defaultPolicy, type Policy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { servingPacks } from "../../src/life/serving-packs.ts";
import { usableLots } from "../../src/supplies/usable-lots.ts";
import { catalogued, day, device, ordered, pack, stock } from "../fleet/make-rows.ts";

/** Lots as "reference x quantity from .. until", as of 1 November 2026 with 14 days of life asked of a dated unit. */
function lots(fleet: Partial<Fleet>, spares: Fleet["packs"] = [], changes: Partial<Policy> = {}): string[] {
  const policy = { ...defaultPolicy(day("2026-11-01")), ...changes };
  const all = { ...emptyFleet(), ...fleet, packs: spares };
  return usableLots(all, policy, servingPacks(all, policy).stock).map(
    ({ reference, quantity, availableFrom, usableUntil }) =>
      `${reference} x${quantity} ${isoFromDay(availableFrom)} ${usableUntil === null ? "never" : isoFromDay(usableUntil)}`,
  );
}

describe("usableLots", () => {
  // By hand: of 30 June 2027 the swap day is 16 June, before whose month lies 31 May; of 15 December it is 1 December. What is
  // to be swapped in November itself takes the place of nothing
  it("has what a store holds, to the end of the month before its swap day, and nothing that is held or at a device", () => {
    const [devices, catalogue] = [
      [device("D1"), device("D2", { retired: day("2026-01-01") })],
      [catalogued("Gel", "gel", { openedDays: 30 })],
    ];
    const datedStock = [
      stock("Pads", "2026-12-15", "Store", { lot: "this month", quantity: 2 }),
      stock("Pads", "2026-12-14", "Store", { lot: "too late" }),
      stock("Pads", "2027-06-30", "Store", { lot: "held", held: "recalled" }),
      stock("Pads", "2027-06-30", "Store", { lot: "none", quantity: 0 }),
      stock("Pads", "2027-06-30", "d1 ", { lot: "fitted" }),
      stock("Pads", "2027-06-30", "D2", { lot: "stranded" }),
      stock("Pads", "2027-06-30", null, { lot: "anywhere" }),
      // opened on 5 November, good for 30 days, to 5 December
      stock("Gel", "2028-06-30", "Store", { lot: "opened", opened: day("2026-11-05") }),
      // opened on 20 October, to 19 November
      stock("Gel", "2028-06-30", "Store", { lot: "too old", opened: day("2026-10-20") }),
    ];
    expect(lots({ devices, catalogue, datedStock })).toEqual([
      "opened x1 2026-11-01 2026-11-30",
      "this month x2 2026-11-01 2026-11-30",
      "anywhere x1 2026-11-01 2027-05-31",
    ]);
  });

  it("has what is on order from its day, else after the lead time, with the life that it arrives with", () => {
    const catalogue = [catalogued("Pads", "pads", { leadDays: 40, arrivesWithMonths: 20, shelfMonths: 24 })];
    const onOrder = [
      ordered("Pads", 5, { order: "undated" }),
      ordered("pads", 6, { order: "overdue", arrives: day("2026-10-01") }),
      ordered("Pads", 7, { order: "dated", arrives: day("2026-12-24"), expiry: day("2027-03-31") }),
      ordered("Pads", 0, { order: "none" }),
    ];
    // 40 days on is 11 December; 20 months from December and November to the months' ends, and like what lies in a store they
    // serve until the month before the one in which they would have to be swapped
    expect(lots({ catalogue, onOrder })).toEqual([
      "dated x7 2026-12-24 2027-02-28",
      "overdue x6 2026-11-01 2028-06-30",
      "undated x5 2026-12-11 2028-07-31",
    ]);
  });

  /*
   * By hand: the shelf's four years from 10 May 2023 end on 10 May 2027. A pack with use-by in January 2027, and one that 44 months
   * end in it, take the place of nothing that is due in January; at 40 months both made in May 2023 are too old.
   */
  it("has spare packs to the end of their shelf life, or of the month before they are due by their use-by or age", () => {
    const catalogue = [catalogued("Cell", "pack", { shelfMonths: 48 })];
    const made = day("2023-05-10");
    const spares = [
      pack("old", { item: "Cell", made: day("2021-10-31") }),
      pack("made", { item: "Cell", made }),
      pack("dated", { item: "Cell", made }),
      pack("undated", { item: "cell" }),
      pack("held", { item: "Cell", held: "swollen" }),
      pack("left", { item: "Cell", retired: day("2026-11-01") }),
    ];
    const datedStock = [stock("Cell", "2027-01-31", "Store", { serial: "DATED" })];
    expect(lots({ catalogue, datedStock }, spares)).toEqual([
      "dated x1 2026-11-01 2026-12-31",
      "made x1 2026-11-01 2027-05-10",
      "undated x1 2026-11-01 never",
    ]);
    expect(lots({ catalogue, datedStock }, spares, { packMaxAgeMonths: 44 })[1]).toBe("made x1 2026-11-01 2026-12-31");
    expect(lots({ catalogue, datedStock }, spares, { packMaxAgeMonths: 40 })).toEqual(["undated x1 2026-11-01 never"]);
    expect(lots({ catalogue, datedStock }, spares, { packMaxAgeMonths: 60 })[1]).toBe("made x1 2026-11-01 2027-05-10");
  });
});
