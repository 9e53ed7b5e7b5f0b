import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const LOG =
  "Asset,Test date,Minutes to shutdown,Pass/Fail\nM1,2026-03-12,186,P\nM1,2026-09-14,182,P\nM2,2026-09-15,141,F\n";
const PACKS = "Serial,Device,In service,Retired\nB1,M1,2023-05-01,2026-06-01\nB2,M1,2026-06-02,\nB3,M2,2023-05-01,\n";

function testsOf(sheets: Record<string, string>) {
  return read(sheets).fleet.runtimeTests.map(({ serial, minutes }) => [serial, minutes]);
}

describe("a log of battery tests that names devices", () => {
  it("tells of the battery that was in the device on the day", () => {
    expect(testsOf({ "log.csv": LOG, "packs.csv": PACKS })).toEqual([
      ["B1", 186],
      ["B2", 182],
      ["B3", 141],
    ]);
  });

  it("keeps the device's name where its batteries are several, and says that it is unknown", () => {
    const both = "Serial,Device,In service\nB1,M1,2023-05-01\nB2,M1,2023-05-01\nB3,M2,2023-05-01\n";
    expect(testsOf({ "log.csv": LOG, "packs.csv": both }).map(([serial]) => serial)).toEqual(["M1", "M1", "B3"]);
    expect(read({ "log.csv": LOG, "packs.csv": both }).findings.map(({ code }) => code)).toContain("serial-unknown");
  });

  it("puts the packs that it tells of into the devices of that name, where no list of packs does", () => {
    const { fleet } = read({ "log.csv": LOG, "devices.csv": "Device,Site\nM1,North\nM2,South\n" });
    expect(fleet.packs.map(({ serial, device }) => [serial, device])).toEqual([
      ["M1", "M1"],
      ["M2", "M2"],
    ]);
  });

  it.each([
    [
      "two batteries of each device without numbers",
      "Device,Test date,Battery A capacity,Battery B capacity\nM1,2026-03-12,92,88\nM2,2026-03-14,75,81\n",
    ],
    ["uses of devices in minutes", "Device,Date,Minutes used\nM1,2026-03-12,42\nM2,2026-03-14,17\n"],
    ["checks of devices", "Unit,Date of self test,Result\nM1,2026-03-12,Pass\nM2,2026-03-14,Fail\n"],
    [
      "a register that says how far a battery is charged",
      "Device ID,Last test date,Battery (%),Location\nM1,2026-03-12,91,North\nM2,2026-03-14,100,South\n",
    ],
  ])("is not seen in %s", (_, sheet) => {
    expect(testsOf({ "sheet.csv": sheet })).toEqual([]);
  });

  it.each([
    [
      "capacity",
      "Device ID,Last test date,Battery capacity (%),Location\nM1,2026-03-12,91,North\nM2,2026-03-14,78,South\n",
    ],
    ["health", "Asset,Model,Battery health,Last tested\nM1,alpha,91%,2026-03-12\nM2,beta,78%,2026-03-14\n"],
    ["runtime", "Device,Type,Battery runtime (min),Test date\nM1,alpha,91,2026-03-12\nM2,beta,78,2026-03-14\n"],
    [
      "minutes of a test",
      "Unit,Station,Battery test minutes,Battery test date\nM1,N,91,2026-03-12\nM2,S,78,2026-03-14\n",
    ],
    ["German", "Defibrillator,Standort,Akkukapazität %,Prüfdatum\nM1,Nord,91,2026-03-12\nM2,Süd,78,2026-03-14\n"],
  ])("is seen in a register of devices whose batteries have no number, by their %s", (_, sheet) => {
    const { fleet, findings } = read({ "sheet.csv": sheet });
    expect(fleet.runtimeTests.map(({ serial, percent, minutes }) => [serial, percent ?? minutes])).toEqual([
      ["M1", 91],
      ["M2", 78],
    ]);
    expect(fleet.packs.map(({ serial, device }) => [serial, device])).toEqual([
      ["M1", "M1"],
      ["M2", "M2"],
    ]);
    expect(findings.map(({ code }) => code)).toContain("battery-unnamed");
  });
});
