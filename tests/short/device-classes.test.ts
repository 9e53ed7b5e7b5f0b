import { expect, it } from "vitest";
import { itemBook } from "../../src/fleet/item-book.ts";
import { whoTakes } from "../../src/fleet/who-takes.ts";
import { countInService, deviceClasses } from "../../src/short/device-classes.ts";
import { catalogueRow, day, fleetWith } from "../orders/made-up.ts";
import { device } from "./made-up.ts";

const AS_OF = day("2026-11-25");

// By hand: monitors take pads and gel, defibrillators pads alone, bags gel alone, and what the catalogue names nowhere nothing
it("deviceClasses sorts devices by all that they take, and counts those in service", () => {
  const fleet = fleetWith({
    devices: [
      device("M1"),
      device("M2", { retired: day("2026-12-31") }),
      device("M3", { inService: day("2026-12-31") }),
      device("A1", { type: "AED" }),
      device("B1", { type: "Bag" }),
      device("X1", { type: "Other" }),
      device("Gone", { retired: AS_OF }),
    ],
    catalogue: [
      catalogueRow({ item: "Gel", fits: ["Monitor", "Bag"] }),
      catalogueRow({ item: "Pads", fits: ["Monitor", "AED"] }),
    ],
  });
  const book = itemBook(fleet);
  const takes = whoTakes(fleet, book, AS_OF);
  const classes = deviceClasses(takes, [book.find("Gel"), book.find("Pads")]);
  const told = classes.map((one) => [one.items, one.devices.map(({ device: name }) => name)]);
  expect(told.sort()).toEqual([
    [[], ["X1"]],
    [
      [0, 1],
      ["M1", "M2", "M3"],
    ],
    [[0], ["B1"]],
    [[1], ["A1"]],
  ]);
  // by hand: M2 is there up to the 30th, M3 from the 31st on
  const monitors = classes.find(({ items }) => items.length === 2)!;
  expect(["2026-12-30", "2026-12-31", "2027-01-01"].map((iso) => countInService(monitors, day(iso)))).toEqual([
    2, 2, 2,
  ]);
  expect(countInService({ ...monitors, devices: monitors.devices.slice(0, 2) }, day("2026-12-30"))).toBe(2);
  expect(countInService({ ...monitors, devices: monitors.devices.slice(0, 2) }, day("2026-12-31"))).toBe(1);
});
