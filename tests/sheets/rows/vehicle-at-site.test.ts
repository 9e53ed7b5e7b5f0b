import { expect, it } from "vitest";
import { vehicleAtSite } from "../../../src/sheets/rows/vehicle-at-site.ts";

it.each([
  ["North", "Ambulance 7", "North, Ambulance 7"],
  ["North", "NORTH-2", "NORTH-2"],
  ["North  Depot", "Ambulance 7 (north depot)", "Ambulance 7 (north depot)"],
  // letters and digits within a word are no site: else vehicles of several sites would be one
  ["A", "Ambulance 1", "A, Ambulance 1"],
  ["2", "Ambulance 12", "2, Ambulance 12"],
  ["(N)", "Ambulance 7 N", "Ambulance 7 N"],
  ["North", "", "North"],
  ["", "Ambulance 7", "Ambulance 7"],
])("of site %s and vehicle %s: %s", (site, vehicle, name) => {
  expect(vehicleAtSite(site, vehicle)).toBe(name);
});
