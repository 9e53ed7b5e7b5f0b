import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { read } from "./sheet-file.ts";

const DEVICES = "AED,Battery installed\nE-1,2019-02-23\nE-2,2018-02-14\n";
const serials = (texts: Record<string, string>) => read(texts).fleet.packs.map(({ serial }) => serial);

describe("packs that go by their device's name", () => {
  it("give way to the pack that another list has in the device", () => {
    expect(serials({ "a.csv": DEVICES, "b.csv": "battery serial,device,in service\nB-1,E-1,2019-02-23\n" })).toEqual([
      "E-2",
      "B-1",
    ]);
  });

  it("give way to a list of packs that names no device, since it may tell of the same", () => {
    expect(
      serials({ "a.csv": DEVICES, "b.csv": "battery serial,in service\nB-1,2019-02-23\nB-2,2018-02-14\n" }),
    ).toEqual(["B-1", "B-2"]);
  });

  it("tell the only pack in the device what its own list leaves blank", () => {
    const packs = "battery serial,device,in service,retired\nB-1,E-1,,\nB-2,e-2,2021-06-01,\nB-0,E-1,,2019-02-22\n";
    const inService = (text: string) =>
      read({ "a.csv": DEVICES, "b.csv": text }).fleet.packs.map(({ serial, inService }) => [
        serial,
        inService && isoFromDay(inService),
      ]);
    expect(inService(packs)).toEqual([
      ["B-1", "2019-02-23"],
      ["B-2", "2021-06-01"],
      ["B-0", null],
    ]);
    // of two nobody can say which of them was installed then
    expect(inService(`${packs}B-3,E-1,,\n`).map(([, day]) => day)).toEqual([null, "2021-06-01", null, null]);
  });

  it("lose no row: the line still tells of its device", () => {
    const reading = read({ "a.csv": DEVICES, "b.csv": "battery serial,device,in service\nB-1,E-1,2019-02-23\n" });
    expect(reading.setAside).toEqual([]);
    expect(reading.fleet.devices.map(({ device }) => device)).toEqual(["E-1", "E-2"]);
  });
});
