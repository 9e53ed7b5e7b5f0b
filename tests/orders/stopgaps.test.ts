import { describe, expect, it } from "vitest";
import { monthOfDay } from "../../src/calendar/month.ts";
import type { CatalogueRow, DatedStockRow, DeviceRow, PackRow } from "../../src/fleet/rows.ts";
import type { PackLife } from "../../src/life/types.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { AS_OF, catalogueRow, certainDemand, day, fleetWith, policyWith, supplierRow } from "./made-up.ts";

const ITEM = "Pads, adult";
const SOURCE = { file: "made-up.csv", sheet: null, line: 2 };
/** The order arrives on 2026-12-25: as-of and 30 days of lead. */
const NEEDS = certainDemand(ITEM, [2, 3, 4]);

function device(name: string, facts: Partial<DeviceRow> = {}): DeviceRow {
  const blank = { site: null, duty: null, inService: null, temperatureC: null, usesPerYear: null, retired: null };
  return { device: name, type: "AED", ...blank, source: SOURCE, ...facts };
}

function stock(place: string | null, quantity: number, facts: Partial<DatedStockRow> = {}): DatedStockRow {
  const blank = { lot: null, serial: null, made: null, opened: null, label: null, held: null };
  return { item: ITEM, expiry: day("2028-06-30"), quantity, place, ...blank, source: SOURCE, ...facts };
}

function reasonWith(
  rows: { devices?: DeviceRow[]; datedStock?: DatedStockRow[] },
  facts: Partial<CatalogueRow> = {},
  packs: PackLife[] = [],
): string {
  const item = catalogueRow({ item: ITEM, fits: ["AED"], perDevice: 1, ...facts });
  const fleet = fleetWith({
    ...rows,
    catalogue: [item],
    suppliers: [supplierRow()],
    packs: packs.map((one) => one.pack),
  });
  const [line] = scheduleOrders(fleet, policyWith({ horizonMonths: 3 }), [NEEDS], [], packs).orders;
  expect(line).toMatchObject({ late: true, arriveBy: day("2026-12-25") });
  return line!.reason;
}

describe("a late line's reason: stopgaps in sight", () => {
  it("names none where there is none", () => {
    expect(reasonWith({ devices: [device("D1")], datedStock: [stock("D1", 1)] })).not.toContain("Until then");
  });

  // By hand: 3 held where 1 is needed leave 2, 2 leave 1
  it("units to move from devices that hold more than they need", () => {
    const devices = [device("D1"), device("D2"), device("D3")];
    const reason = reasonWith({ devices, datedStock: [stock("D1", 2), stock("D2", 3), stock("D3", 1)] });
    expect(reason).toContain("Until then: 3 units to move from devices that hold more than they need: D2 (2), D1 (1).");
  });

  it("takes no device to hold too many where the catalogue does not say how many it needs", () => {
    const rows = { devices: [device("D1")], datedStock: [stock("D1", 3)] };
    expect(reasonWith(rows, { perDevice: null })).not.toContain("Until then");
  });

  it("spares in devices out of service", () => {
    const rows = { devices: [device("D1", { retired: AS_OF - 10 })], datedStock: [stock("D1", 1)] };
    expect(reasonWith(rows)).toContain("Until then: 1 unit in devices out of service: D1.");
  });

  it("units to swap out early from a device that leaves service before the order arrives, and from no other", () => {
    const devices = [
      device("D1", { retired: day("2026-12-10") }),
      device("D2", { retired: day("2026-12-25") }),
      device("D3", { retired: day("2026-12-26") }),
    ];
    const reason = reasonWith({ devices, datedStock: [stock("D1", 1), stock("D2", 1), stock("D3", 1)] });
    expect(reason).toContain(
      "Until then: 2 units to swap out early from devices that leave service: D1 (1) on 2026-12-10, D2 (1) on 2026-12-25.",
    );
  });

  // By hand: a unit in date to 5 December has 10 days left at as-of, under the 14 that a fitted one must have
  it("units on the shelf too short-dated to plan on", () => {
    const rows = {
      datedStock: [stock("Store", 4, { expiry: day("2026-12-05") }), stock("Store", 2, { expiry: AS_OF - 1 })],
    };
    expect(reasonWith(rows)).toContain(
      "Until then: 4 units on the shelf too short-dated to plan on, in date to 2026-12-05 at most.",
    );
  });

  it("never held units, nor what lapses before the order arrives", () => {
    const devices = [device("D1", { retired: AS_OF - 10 })];
    const datedStock = [stock("D1", 1, { held: "recall" }), stock("D1", 1, { expiry: day("2026-12-24") })];
    expect(reasonWith({ devices, datedStock })).not.toContain("Until then");
  });

  it("packs of a pool that are unlikely to be due by then", () => {
    const reason = reasonWith({}, { kind: "pack" }, [pack("A", 0.02), pack("B", 0.09), pack("C", 0.3)]);
    expect(reason).toContain("Until then: 2 packs not due by then in the pool at Main.");
  });

  it("names three places and counts the rest", () => {
    const names = ["D1", "D2", "D3", "D4", "D5"];
    const devices = names.map((name) => device(name, { retired: AS_OF - 1 }));
    expect(reasonWith({ devices, datedStock: names.map((name) => stock(name, 1)) })).toContain(
      "5 units in devices out of service: D1 (1), D2 (1), D3 (1) and 2 more places.",
    );
  });
});

/** A pack of the pool at Main; `due` is its chance to be due by the end of each month from as-of's on. */
function pack(serial: string, due: number): PackLife {
  const blank = { device: null, made: null, cycles: null, cyclesOn: null, retired: null, retiredBecause: null };
  const row: PackRow = {
    serial,
    item: ITEM,
    site: "Main",
    inService: day("2024-01-01"),
    temperatureC: null,
    held: null,
    ...blank,
    source: SOURCE,
  };
  const band = { kind: "beyond-horizon" as const, p10: null, p50: null, p90: null };
  const none = new Float64Array(3);
  expect(monthOfDay(day("2026-12-25")) - monthOfDay(AS_OF)).toBe(1);
  return {
    pack: row,
    item: ITEM,
    site: "Main",
    basis: "typical",
    readings: 0,
    capacityNow: null,
    path: { p10: [], p50: [], p90: [] },
    belowBy: band,
    replaceBy: { ...band, because: null, note: null },
    dueChance: Float64Array.of(0, due, 1),
    causes: { fade: none, limit: none, failure: none },
    says: "",
  };
}
