import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/index.ts";
import { read } from "./sheet-file.ts";

const REGISTER =
  "AED,Site,Battery SN,Battery installed,Pads exp,Status\nA1,ED,B1,2023-05-01,2027-05-31,OK\nA2,ICU,B2,2023-05-01,2027-05-31,Scrapped 2026-05-01\n";

describe("the status at the end of a register's lines", () => {
  it("is the device's, behind several things that the line tells of", () => {
    const { fleet, findings } = read({ "register.csv": REGISTER });
    expect(fleet.devices.map(({ device, retired }) => [device, retired])).toEqual([
      ["A1", null],
      ["A2", dayFromIso("2026-05-01")],
    ]);
    expect(fleet.datedStock.every(({ held }) => held === null)).toBe(true);
    // the plan heeds it: no finding says otherwise
    expect(findings.map(({ code }) => code)).toEqual([]);
  });

  it("is that of the one thing that it stands behind", () => {
    const { fleet } = read({
      "list.csv": "Device,Battery SN,Battery installed,Status\nM1,B1,2023-05-01,OK\nM2,B2,2023-05-01,faulty\n",
    });
    expect(fleet.packs.map(({ held }) => held)).toEqual([null, "faulty"]);
  });
});
