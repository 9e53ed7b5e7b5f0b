import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

describe("a battery whose line names no device but says where it lies", () => {
  it.each(["spare", "Spares", "in charger", "Shelf", "Réserve"])("is in no device where it says %j", (where) => {
    const { fleet } = read({ "packs.csv": `Battery SN,Installed in,In service\nB1,M1,2023-01-05\nB2,${where},\n` });
    expect(fleet.packs.map(({ serial, device, site }) => [serial, device, site])).toEqual([
      ["B1", "M1", null],
      ["B2", null, where],
    ]);
  });

  it("makes no device of that word in a list of devices and their batteries", () => {
    const { fleet, setAside } = read({
      "list.csv": "Unit,Station,Battery SN,In service\nM1,North,B1,2023-01-05\nSpare,North,B2,\n",
    });
    expect(fleet.devices.map(({ device }) => device)).toEqual(["M1"]);
    expect(fleet.packs.map(({ serial, device, site }) => [serial, device, site])).toEqual([
      ["B1", "M1", "North"],
      ["B2", null, "North"],
    ]);
    expect(setAside).toEqual([]);
  });

  it("leaves devices alone where no batteries are listed", () => {
    const { fleet } = read({ "devices.csv": "Device,Type\nSpare,monitor\nM1,monitor\n" });
    expect(fleet.devices.map(({ device }) => device)).toEqual(["Spare", "M1"]);
  });
});

describe("spare pads and batteries kept for later", () => {
  it("are dated stock of their device, under the words for spare and for the last day of fitting", () => {
    const { fleet } = read({
      "list.csv":
        "AED,Adult exp,Spare adult exp,Battery install by\nA1,06/2027,03/2028,01/2029\nA2,02/2027,none,07/2028\n",
    });
    expect(fleet.datedStock.map(({ item, place }) => [item, place])).toEqual([
      ["Adult pads", "A1"],
      ["Spare adult pads", "A1"],
      ["Battery", "A1"],
      ["Adult pads", "A2"],
      ["Battery", "A2"],
    ]);
  });
});
