import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../../src/calendar/day.ts";
import { read } from "../sheet-file.ts";

describe("a column of the days on which things were retired", () => {
  // a row that is gone, nobody knows since when, would be planned for
  it("sets a row aside whose word says that it is gone, and no day since when", () => {
    const rows = "B1,yes\nB2,Scrapped\nB3,x\nB4,no\nB5,-\nB6,\nB7,stolen 2025-01-13\nB8,2025-06\n";
    const { fleet, setAside } = read(`serial,retired\n${rows}`);
    expect(fleet.packs.map(({ serial, retired }) => [serial, retired && isoFromDay(retired)])).toEqual([
      ["B4", null],
      ["B5", null],
      ["B6", null],
      ["B7", "2025-01-13"],
      ["B8", "2025-06-30"],
    ]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([
      [2, "gone-undated"],
      [3, "gone-undated"],
      [4, "gone-undated"],
    ]);
  });

  // as of 2026-11-01; A4's day and A1's other line tell more
  it("has a device leave by as-of, unless another line tells the day, so that nothing is planned for it", () => {
    const { fleet, setAside } = read({
      "a.csv": "device,type,retired\nA1,aed,yes\nA2,aed,no\nA3,aed,decommissioned\nA4,aed,2025-01-13\n",
      "b.csv": "device,site,retired\na1,North,2025-02-14\nA3,North,\n",
    });
    expect(fleet.devices.map(({ device, site, retired }) => [device, site, retired && isoFromDay(retired)])).toEqual([
      ["A1", "North", "2025-02-14"],
      ["A2", null, null],
      ["A3", "North", "2026-11-01"],
      ["A4", null, "2025-01-13"],
    ]);
    expect(setAside).toEqual([]);
  });

  it("leaves out a cell that tells neither, with a finding", () => {
    const { fleet, findings } = read("serial,item,retired\nB1,LX,soon\nB2,LX,2025-01-13\n");
    expect(fleet.packs[0]).toMatchObject({ serial: "B1", retired: null });
    expect(findings.map(({ code, line }) => [code, line])).toEqual([["date-unreadable", 2]]);
  });
});

describe("packs of which a list says that they are gone, and none since when", () => {
  const inDevices = "Device,Battery S/N,Install\nMD-1,B1,2023-01-05\nMD-2,B2,2023-02-05\n";

  it.each([
    ["Battery S/N,Status\nb1,Scrapped\nB2,In use\n", "Scrapped"],
    ["serial,retired_because\nB1,faded\nB2,\n", "faded"],
  ])("are in no device, whatever another list has", (list, word) => {
    const { fleet, findings } = read({ "devices.csv": inDevices, "packs.csv": list });
    expect(fleet.packs.map(({ serial, device }) => [serial, device])).toEqual([["B2", "MD-2"]]);
    expect(fleet.devices.map(({ device }) => device)).toEqual(["MD-1", "MD-2"]);
    const undated = findings.filter(({ code }) => code === "gone-undated");
    expect(undated.map(({ file, line }) => [file, line])).toEqual([
      ["devices.csv", 2],
      ["packs.csv", 2],
    ]);
    expect(undated[0]!.message).toBe(
      `"${word}" in packs.csv, line 2 says that it is gone, and nothing tells since when.`,
    );
  });

  it("are retired where another list tells the day", () => {
    const { fleet, setAside } = read({
      "a.csv": "Battery S/N,Status,Device\nB1,Scrapped,MD-1\n",
      "b.csv": "serial,retired,retired_because\nB1,2025-03-04,damaged\n",
    });
    expect(fleet.packs.map(({ retired, retiredBecause }) => [retired && isoFromDay(retired), retiredBecause])).toEqual([
      ["2025-03-04", "damaged"],
    ]);
    expect(setAside).toEqual([]);
  });

  // beside a new battery a reason may be why the one before it came out
  it("are not those that a list gives a reason, and does not say for what", () => {
    const { fleet } = read("Battery,Device,Fitted,Reason\nB1,MD-1,2024-01-05,weak\nB2,MD-2,2024-02-05,age\n");
    expect(fleet.packs.map(({ serial }) => serial)).toEqual(["B1", "B2"]);
  });
});

describe("a list of devices with a column for yes or no under a word for gone", () => {
  it("has those with yes leave by as-of, and keeps those with no", () => {
    const { fleet, findings } = read("Device,Type,Retired?\nMD-1,monitor,no\nMD-2,monitor,yes\nMD-3,monitor,\n");
    expect(fleet.devices.map(({ device, retired }) => [device, retired && isoFromDay(retired)])).toEqual([
      ["MD-1", null],
      ["MD-2", "2026-11-01"],
      ["MD-3", null],
    ]);
    expect(findings.map(({ code, line }) => [code, line])).toEqual([["gone-undated", 3]]);
  });

  it("is not read under a word for what may come back", () => {
    const { fleet } = read("Device,Type,Out of service\nMD-1,monitor,no\nMD-2,monitor,yes\n");
    expect(fleet.devices.map(({ retired }) => retired)).toEqual([null, null]);
  });
});

describe("a name with a remark that the thing is gone", () => {
  it("names a pack that is in no device, or has been gone since the remark's day, and a device that has left", () => {
    const { fleet, setAside } = read({
      "devices.csv": "Device,Type\nMD-1 (scrapped),monitor\nMD-2 (ED),monitor\n",
      "packs.csv":
        "Serial,Device,Installed\nB1,MD-2,2023-01-05\nB2 (removed),MD-2,2022-02-05\nB3 REMOVED,MD-2,2022-03-05\nB4 (lost 2025-06),,2022-04-05\n",
    });
    expect(fleet.devices.map(({ device, retired }) => [device, retired && isoFromDay(retired)])).toEqual([
      ["MD-1", "2026-11-01"],
      ["MD-2 (ED)", null],
    ]);
    expect(fleet.packs.map(({ serial, retired }) => [serial, retired && isoFromDay(retired)])).toEqual([
      ["B1", null],
      ["B4", "2025-06-30"],
    ]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([
      [3, "gone-undated"],
      [4, "gone-undated"],
    ]);
  });
});
