import { expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock, use } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));
const fleet: Fleet = {
  ...emptyFleet(),
  catalogue: [catalogued("Pads", "pads", { shelfMonths: 24 })],
  datedStock: [stock("Pads", "2027-06-30", "Station 1", { quantity: 4 }), stock("Pads", "2027-08-31", "Station 2")],
};

it("says that stock on shelves alone is never replaced", () => {
  const { cautions } = forecastDatedStock(fleet, policy);
  expect(cautions).toHaveLength(1);
  expect(cautions[0]).toContain("nothing that needs Pads");
  expect(cautions[0]).toContain("This stock, 5 units, counts as lying on shelves");
});

it("says nothing once a device carries a unit, or a use is logged", () => {
  const carried = { ...fleet, devices: [device("Station 1")] };
  expect(forecastDatedStock(carried, policy).cautions).toEqual([]);
  const logged = { ...fleet, useLog: [use("2026-06-01", "Pads", "Station 1")] };
  expect(forecastDatedStock(logged, policy).cautions).toEqual([]);
});
