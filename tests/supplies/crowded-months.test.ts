import { describe, expect, it } from "vitest";
import { monthFromText } from "../../src/calendar/month.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 12, swapBeforeExpiryDays: 0 };

describe("crowdedMonths", () => {
  // By hand: twelve units come as six deliveries, one a device, since a lot has one name, case and blanks apart. Spread evenly
  // over twelve months, all six fall in one month with a chance of 12 times (1/12)^6, and the even share is one unit
  it("takes a lot spelled in two ways for one, and for one delivery to a place", () => {
    const names = ["D1", "D2", "D3", "D4", "D5", "D6"];
    const datedStock = names.flatMap((place) => [
      stock("Pads", "2027-05-31", place, { lot: "ab1 " }),
      stock("Pads", "2027-05-31", place.toLowerCase(), { lot: "AB1" }),
    ]);
    const fleet = { ...emptyFleet(), devices: names.map((name) => device(name)), datedStock };
    const [crowd, ...others] = forecastDatedStock(fleet, policy).crowdedMonths;
    expect(others).toEqual([]);
    expect(crowd).toMatchObject({ month: monthFromText("2027-05"), units: 12, evenShare: 1, places: 6 });
    expect(crowd!.lots).toHaveLength(1);
    expect(crowd!.says).toContain("They stand at 6 places from 1 lot.");
    expect(crowd!.pValue * 12 ** 5).toBeCloseTo(1, 6);
  });

  // By hand: it is the old pads that lapse, and who looks for the new ones finds none; where both fall due in one month, they are
  // one item, by the name under which it is bought now
  it.each([
    [["old", "old", "old", "old", "old"], "old"],
    [["old", "old", "old", "new", "new"], "new"],
  ])("calls a crowd of %j %s", (names, called) => {
    const datedStock = names.map((name, at) => stock(name, "2027-10-31", `D${at}`));
    const catalogue = [catalogued("old", "pads", { replacedBy: "new" }), catalogued("new", "pads")];
    const fleet = { ...emptyFleet(), devices: names.map((_, at) => device(`D${at}`)), catalogue, datedStock };
    const [crowd, ...others] = forecastDatedStock(fleet, policy).crowdedMonths;
    expect(others).toEqual([]);
    expect(crowd).toMatchObject({ item: called, units: 5 });
    expect(crowd!.says).toMatch(new RegExp(`^5 units of ${called} fall due in 2027-10`));
  });

  // By hand: five units and no fewer are a crowd, five being at least twice the even share of 5/12
  it.each([
    [5, 1],
    [4, 0],
  ])("finds of %i units in one month %i crowds", (units, crowds) => {
    const names = Array.from({ length: units }, (_, at) => `D${at}`);
    const datedStock = names.map((place) => stock("Pads", "2027-10-31", place));
    const fleet = { ...emptyFleet(), devices: names.map((name) => device(name)), datedStock };
    expect(forecastDatedStock(fleet, policy).crowdedMonths).toHaveLength(crowds);
  });
});
