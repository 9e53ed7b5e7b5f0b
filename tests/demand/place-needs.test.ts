import { describe, expect, it } from "vitest";
import { placeNeeds } from "../../src/demand/place-needs.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { type CatalogueRow, type DeviceRow, emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { itemPlaces } from "../../src/supplies/item-places.ts";
import { catalogued, day, device, routine, stock, use } from "../fleet/make-rows.ts";

/** Plans as of 25 November 2026 for November, December and January. */
const policy = { ...defaultPolicy(day("2026-11-25")), horizonMonths: 3, useLogFrom: day("2025-11-25") };

function needsOf(
  devices: Partial<DeviceRow>[],
  more: Partial<Fleet> = {},
  row: Partial<CatalogueRow> = { perDevice: 2 },
) {
  const fleet: Fleet = {
    ...emptyFleet(),
    catalogue: [catalogued("Pads", "pads", { fits: ["Monitor"], ...row })],
    devices: devices.map((facts, n) => device(`D${n + 1}`, { type: "Monitor", ...facts })),
    ...more,
  };
  const { items } = itemPlaces(fleet, policy);
  return placeNeeds(items.find(({ item }) => item.name === "Pads")!, policy);
}

describe("placeNeeds without a log of uses", () => {
  // By hand: two pads come with a device on its first day; a device of today is not new, one after the plan is not in it,
  // and one that has left before it comes needs none
  it("counts a new device's units in the month of its first day", () => {
    const { certain, causes } = needsOf([
      { inService: day("2026-11-25") },
      { inService: day("2026-11-26") },
      { inService: day("2026-12-01") },
      { inService: day("2027-01-31") },
      { inService: day("2027-02-01") },
      { inService: day("2026-12-10"), retired: day("2026-12-10") },
    ]);
    expect([...certain]).toEqual([2, 2, 2]);
    expect([...causes.growth]).toEqual([2, 2, 2]);
    expect([causes.expiry, causes.use, causes.routine].every((units) => units.every((one) => one === 0))).toBe(true);
  });

  /*
   * By hand: swapped 14 days before expiry: on 17 December, 30 November and 1 December; what is overdue, on as-of. Replaced in
   * November by what lasts a month, to 31 December, a pad is swapped again on 17 December, and in January.
   */
  it("counts expiries on their swap days, and renewals of what replaces them", () => {
    const datedStock = [
      stock("Pads", "2026-12-31", "D1", { quantity: 2 }),
      stock("Pads", "2026-12-14", "D2"),
      stock("Pads", "2026-12-15", "D3"),
      stock("Pads", "2025-01-31", "D4"),
    ];
    const devices = [{}, {}, {}, {}];
    const once = needsOf(devices, { datedStock });
    expect([...once.certain]).toEqual([2, 3, 0]);
    expect([...once.causes.expiry]).toEqual([2, 3, 0]);
    expect([...needsOf(devices, { datedStock }, { arrivesWithMonths: 1 }).certain]).toEqual([2, 5, 5]);
  });

  // By hand: 36.525 units a year are one in 10 days: 5 days after as-of, as half is gone, on 30 November; then on the 10th, 20th
  // and 30th of December, the 9th, 19th and 29th of January. Expected are 6, 31 and 31 days' worth of 0.1
  it("counts what routine takes, by the day", () => {
    const { certain, causes } = needsOf([{}], { routine: [routine("check", 36.525, { item: "Pads" })] });
    expect([...certain]).toEqual([1, 3, 3]);
    [0.6, 3.1, 3.1].forEach((units, month) => {
      expect(causes.routine[month]).toBeCloseTo(units, 9);
    });
  });

  // By hand: from 11 December on 21 days of December are left; up to the 11th, 10 have gone
  it("expects routine on the days in service alone", () => {
    const expected = (facts: Partial<DeviceRow>) =>
      [...needsOf([facts], { routine: [routine("check", 36.525, { item: "Pads" })] }).causes.routine].map((units) =>
        Number(units.toFixed(9)),
      );
    expect(expected({ inService: day("2026-12-11") })).toEqual([0, 2.1, 3.1]);
    expect(expected({ retired: day("2026-12-11") })).toEqual([0.6, 1, 0]);
    expect(expected({ inService: day("2027-02-01") })).toEqual([0, 0, 0]);
  });
});

describe("placeNeeds with a log of uses", () => {
  /*
   * By hand: 3 uses of 2 units and 1 of 1 unit in the year's log of the one device are 7/4 units a use and 4 uses in 365 days;
   * the month of November has 6 days left.
   */
  it("expects units by the log's rate, in proportion to the days", () => {
    const useLog = [
      ...["2025-12-01", "2026-03-01", "2026-06-01"].map((date) => use(date, "Pads", "D1", { quantity: 2 })),
      use("2026-09-01", "Pads", "D1"),
    ];
    const { causes, certain, needs } = needsOf([{}], { useLog });
    [6, 31, 31].forEach((days, month) => {
      expect(causes.use[month]).toBeCloseTo(((4 * 7) / 4 / 365) * days, 9);
    });
    expect([...certain]).toEqual([0, 0, 0]);
    // the futures' mean is the expected one, but for their number's error of some 3 %
    const counts = needs!.countsIn(-1, 2);
    const mean = counts.reduce((sum, chance, units) => sum + chance * units, 0);
    expect(mean / (((4 * 7) / 4 / 365) * 68)).toBeCloseTo(1, 1);
  });
});
