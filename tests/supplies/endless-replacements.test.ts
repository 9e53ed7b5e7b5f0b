import { expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));
const fleet: Fleet = {
  ...emptyFleet(),
  devices: [device("D1")],
  datedStock: [stock("Pads", "2027-06-30", "D1"), stock("Gel", "2027-06-30", "D1")],
};
const cautions = (catalogue: Fleet["catalogue"]) => forecastDatedStock({ ...fleet, catalogue }, policy).cautions;

it("says whose replacements are taken never to expire, since nothing tells how long they last", () => {
  expect(cautions([])).toEqual([
    "The catalogue tells no shelf life of Gel, Pads: what replaces such a unit is taken never to expire. Give shelf_months or arrives_with_months.",
  ]);
  expect(cautions([catalogued("Gel", "gel", { shelfMonths: 24 })]).join()).toContain("no shelf life of Pads:");
});

it("says nothing where it is known, or where nothing is carried", () => {
  const known = [catalogued("Pads", "pads", { arrivesWithMonths: 18 }), catalogued("Gel", "gel", { shelfMonths: 24 })];
  expect(cautions(known)).toEqual([]);
  expect(forecastDatedStock({ ...fleet, datedStock: [] }, policy).cautions).toEqual([]);
});
