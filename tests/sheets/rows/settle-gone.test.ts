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
