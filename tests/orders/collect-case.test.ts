import { describe, expect, it } from "vitest";
import { itemBook } from "../../src/fleet/item-book.ts";
import type { Policy } from "../../src/fleet/policy.ts";
import type { Fleet } from "../../src/fleet/rows.ts";
import { itemCase } from "../../src/orders/collect-case.ts";
import { standInGround } from "../../src/orders/stand-ins.ts";
import type { UsableLot } from "../../src/supplies/types.ts";
import { device, pack } from "../fleet/make-rows.ts";
import { AS_OF, catalogueRow, certainDemand, day, fleetWith, policyWith, shelfLot, supplierRow } from "./made-up.ts";

const ITEM = "Pack";

function caseWith(fleet: Fleet, needs: number[], choices: Partial<Policy> = {}, lots: UsableLot[] = []) {
  const policy = policyWith({ horizonMonths: needs.length, ...choices });
  const demand = certainDemand(ITEM, needs);
  return itemCase(demand, lots, standInGround(fleet, policy, itemBook(fleet, [ITEM]), []));
}

/** So many packs in devices of their own. */
function packsInDevices(count: number, more: Partial<Fleet> = {}): Fleet {
  const names = Array.from({ length: count }, (_, n) => `D${n}`);
  return fleetWith({
    devices: [...names.map((name) => device(name)), ...(more.devices ?? [])],
    packs: [...names.map((name) => pack(`S${name}`, { item: ITEM, device: name })), ...(more.packs ?? [])],
    catalogue: [catalogueRow({ item: ITEM, kind: "pack" })],
  });
}

describe("spares to keep", () => {
  const spares = (fleet: Fleet, sparesPercent: number) =>
    caseWith(fleet, [0, 0], { sparesPercent }).itemCase.net.cumulative;

  // By hand: 5 % of 20 are 1, of 21 are 1.05, so 2; 8.8 % of 375 are 33, in binary numbers a hair more
  it("are a share of the packs in devices, rounded up", () => {
    expect(spares(packsInDevices(20), 5)).toEqual([1, 1]);
    expect(spares(packsInDevices(21), 5)).toEqual([2, 2]);
    expect(spares(packsInDevices(375), 8.8)).toEqual([33, 33]);
    expect(spares(packsInDevices(20), 0)).toEqual([0, 0]);
  });

  it("are none for packs on a shelf, of another item, retired by the day of the plan or of a device that is", () => {
    const fleet = packsInDevices(20, {
      devices: [device("Gone", { retired: AS_OF }), device("Going", { retired: AS_OF + 1 })],
      packs: [
        pack("shelf", { item: ITEM }),
        pack("other", { item: "Other", device: "D1" }),
        pack("left", { item: ITEM, device: "D1", retired: AS_OF }),
        pack("there", { item: ITEM, device: "Gone" }),
      ],
    });
    expect(spares(fleet, 5)).toEqual([1, 1]);
    fleet.packs.push(pack("leaves", { item: ITEM, device: "D1", retired: AS_OF + 1 }));
    expect(spares(fleet, 5)).toEqual([2, 2]);
  });
});

describe("the service level", () => {
  it.each([
    [[null], 0.9],
    [[0.97], 0.97],
    [[0.97, null, 0.99], 0.99],
    [[0.8], 0.8],
  ])("where price lists say %j is %d", (said, level) => {
    const catalogue = said.map((serviceLevel, n) => catalogueRow({ item: ITEM, supplier: `S${n}`, serviceLevel }));
    expect(caseWith(fleetWith({ catalogue }), [1], { serviceLevel: 0.9 }).itemCase.level).toBe(level);
  });
});

describe("orders on the way", () => {
  const catalogue = ["Near", "Far"].map((supplier, n) => catalogueRow({ item: ITEM, supplier, leadDays: 10 + 20 * n }));
  const missing = (...lots: Partial<UsableLot>[]) =>
    caseWith(
      fleetWith({ catalogue }),
      [4, 0, 2],
      {},
      lots.map((lot) => shelfLot({ item: ITEM, quantity: 4, ...lot })),
    ).itemCase.net.cumulative;

  // By hand: what leaves Near today is there on 5 December; what comes by then serves November's needs, which wait anyway
  it("serve what waits where nothing ordered today would come sooner", () => {
    expect(missing({ availableFrom: day("2026-12-05") })).toEqual([0, 0, 2]);
    expect(missing({ availableFrom: day("2026-12-06") })).toEqual([4, 4, 4]);
  });

  it("and what is there count under any name of the item, and no other's", () => {
    expect(missing({ item: " PACK" }, { item: "Other", quantity: 9 })).toEqual([0, 0, 2]);
  });
});

describe("a supplier's order days", () => {
  // By hand: order days are 1 January and 1 July 2027; what arrives on 11 January lasts to 31 March less 14 days, so not to
  // April: its needs would have to leave on 1 January at the latest (1 April less 14 and 10 days is 8 March)
  it("are given up where what is ordered then would have lapsed", () => {
    const withLife = (arrivesWithMonths: number) =>
      caseWith(
        fleetWith({
          catalogue: [catalogueRow({ item: ITEM, kind: "pads", leadDays: 10, arrivesWithMonths })],
          suppliers: [supplierRow({ orderEveryMonths: 6 })],
        }),
        [0, 0, 0, 0, 0, 2],
      );
    const kept = withLife(3);
    expect(kept.cautions).toEqual([]);
    expect(kept.itemCase.offers[0]!.slots[5]!.orderBy).toBe(day("2027-01-01"));
    const given = withLife(2);
    expect(given.cautions.map(({ one }) => one)).toEqual([
      "would lapse before the supplier's next order day: it is ordered outside its calendar.",
    ]);
    expect(given.itemCase.offers[0]!.slots[5]!.orderBy).toBe(day("2027-03-08"));
  });
});
