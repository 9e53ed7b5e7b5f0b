import { describe, expect, it } from "vitest";
import type { Fleet } from "../../src/fleet/rows.ts";
import { shortModel } from "../../src/short/short-model.ts";
import type { Scheduled } from "../../src/short/types.ts";
import { unitsInDevices } from "../../src/short/units-in-devices.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { stock } from "../fleet/make-rows.ts";
import { catalogueRow, certainDemand, day, fleetWith, policyWith } from "../orders/made-up.ts";
import { device, NO_LIFE, PADS } from "./made-up.ts";

/** As of 25 November 2026, for November, December and January; pads are swapped 14 days before they lapse. */
const policy = policyWith({ horizonMonths: 3 });

function scheduled(fleet: Fleet, demand: Scheduled["demand"] = []): Scheduled {
  const schedule = { orders: [], budget: [], cautions: [] };
  return { fleet, policy, life: NO_LIFE, dated: forecastDatedStock(fleet, policy), demand, lots: [], schedule };
}

function fleetOfMonitors(leaving: Record<string, string | null>, datedStock: Fleet["datedStock"]): Fleet {
  return fleetWith({
    devices: Object.entries(leaving).map(([name, on]) => device(name, { retired: on === null ? null : day(on) })),
    catalogue: [catalogueRow({ item: PADS, fits: ["Monitor"] })],
    datedStock,
  });
}

describe("unitsInDevices", () => {
  /*
   * By hand: good at a month's end is what was to be swapped by that day and is in date on it: D1's (17 and 31 December) and
   * D2's (31 December, 14 January) at December's, D5's (21 November, 5 December) at November's. D3's are swapped on 1 January
   * and lapse on the 15th, D4's lapse on 30 December. Nothing is good that is held or opened.
   */
  it("counts what is past its swap day and in date at the month's end", () => {
    const datedStock = [
      stock(PADS, "2026-12-31", "D1"),
      stock(PADS, "2026-12-31", "D1", { quantity: 2 }),
      stock(PADS, "2027-01-14", "D2"),
      stock(PADS, "2027-01-15", "D3"),
      stock(PADS, "2026-12-30", "D4"),
      stock(PADS, "2026-12-05", "D5"),
      stock(PADS, "2026-12-31", "D6", { held: "recall" }),
      stock(PADS, "2026-12-31", "D7", { opened: day("2026-11-01") }),
      stock(PADS, "2026-12-31", "Store", { quantity: 9 }),
    ];
    const devices = { D1: null, D2: null, D3: null, D4: null, D5: null, D6: null, D7: null };
    const found = unitsInDevices(scheduled(fleetOfMonitors(devices, datedStock)))("pads, adult");
    expect([...found.good]).toEqual([1, 4, 0]);
    expect([...found.gone]).toEqual([0, 0, 0]);
    // D5's and D6's are due in November, D3's in January, all others in December, D1's three on one day
    expect([[...found.units], [...found.lapses]]).toEqual([
      [2, 8, 9],
      [2, 6, 7],
    ]);
  });

  // By hand: D1 comes on the last day of January and lacks two of three; D2 is there from as-of on
  it("counts what a new device lacks as one lapse", () => {
    const fleet = fleetWith({
      devices: [device("D1", { inService: day("2027-01-31") }), device("D2", { inService: day("2026-11-25") })],
      catalogue: [catalogueRow({ item: PADS, fits: ["Monitor"], perDevice: 3 })],
      datedStock: [stock(PADS, "2028-01-31", "D1")],
    });
    const { units, lapses } = unitsInDevices(scheduled(fleet))("pads, adult");
    expect([[...units], [...lapses]]).toEqual([
      [0, 0, 2],
      [0, 0, 1],
    ]);
  });

  /*
   * By hand: what is to be swapped on 20 December is a need if the device leaves later, and goes with it: from the month's end on
   * or after which it has left. Until then it is good, as its date is 3 January. What is held is needed at as-of.
   */
  it("counts needs of devices that have left service since", () => {
    const leaving = { D1: "2026-12-20", D2: "2026-12-21", D3: "2026-12-31", D4: "2027-01-01", D5: "2026-12-20" };
    const datedStock = Object.keys(leaving).map((place) =>
      stock(PADS, "2027-01-03", place, place === "D5" ? { held: "recall" } : {}),
    );
    const found = unitsInDevices(scheduled(fleetOfMonitors(leaving, datedStock)))("pads, adult");
    expect([...found.gone]).toEqual([0, 3, 4]);
    expect([...found.good]).toEqual([0, 1, 0]);
  });

  // By hand: D1 comes on 10 December, lacks its pads, and is gone by January's end
  it("counts what a new device lacks as gone with it", () => {
    const fleet = fleetWith({
      devices: [device("D1", { inService: day("2026-12-10"), retired: day("2027-01-31") }), device("D2")],
      catalogue: [catalogueRow({ item: PADS, fits: ["Monitor"], perDevice: 2 })],
    });
    expect([...unitsInDevices(scheduled(fleet))("pads, adult").gone]).toEqual([0, 0, 2]);
  });
});

describe("shortModel", () => {
  // By hand: pads of three monitors, two each, lapse on 20 December. What two units lack at once leaves one device short:
  // of 6, 5 and 4 waiting three, three and two are; where uses take as many, each leaves one short, at most the three
  it.each([
    ["expiry", [0, 1, 2, 4, 5, 6], [3, 3, 2, 1, 1, 0]],
    ["use", [0, 1, 2, 4, 5, 6], [3, 3, 3, 2, 1, 0]],
  ] as const)("counts devices short of what %s takes, for units in stock", (cause, supplies, short) => {
    const datedStock = ["D1", "D2", "D3"].map((place) => stock(PADS, "2026-12-20", place, { quantity: 2 }));
    const demand = certainDemand(PADS, [0, 6, 0]);
    const needs = demand.mean;
    const causes = { ...demand.causes, use: new Float64Array(3), [cause]: needs };
    const fleet = fleetOfMonitors({ D1: null, D2: null, D3: null }, datedStock);
    const model = shortModel(scheduled(fleet, [{ ...demand, causes }]));
    const found = supplies.map((units) => {
      const waiting = model.waiting(0, units === 0 ? [] : [{ units, from: 0, to: 2 }]);
      // at the ends of December and of January
      return model.deviceMonths(0, waiting) / 2;
    });
    expect(found).toEqual([...short]);
  });
});
