import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const kept = (text: string) => {
  const { fleet } = read({ "history.csv": text });
  return {
    devices: fleet.devices.map(({ device, retired }) => [device, retired]),
    packs: fleet.packs.map(({ serial, device, retired, retiredBecause }) => [
      serial,
      device,
      retired !== null,
      retiredBecause,
    ]),
  };
};

describe("a history of batteries in devices", () => {
  it("retires the battery that came out, and not its device, whose name stands last", () => {
    expect(
      kept("Date in,Date out,Battery,Device,Reason\n2026-01-04,,B2,M1,\n2023-02-01,2026-01-04,B1,M1,low capacity\n"),
    ).toEqual({
      devices: [],
      packs: [
        ["B2", "M1", false, null],
        ["B1", "M1", true, "faded"],
      ],
    });
  });

  it("has a battery in the device that it went into or, where it went into none, came out of", () => {
    const text =
      "Date in,Date out,Battery,From device,To device\n2026-01-04,,B2,,M1\n2023-02-01,2026-01-04,B1,M1,\n2024-01-04,,B3,M1,M2\n";
    expect(kept(text).packs.map(([serial, device]) => [serial, device])).toEqual([
      ["B2", "M1"],
      ["B1", "M1"],
      ["B3", null],
    ]);
    // in both: nobody can tell by the line where it is, and a finding says so
    expect(read({ "history.csv": text }).findings.map(({ code }) => code)).toContain("copies-disagree");
  });
});
