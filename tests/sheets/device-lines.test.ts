import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/index.ts";
import { read } from "./sheet-file.ts";

const HEADER = "Battery,Serial,In service,Capacity,Date of test\n";
const LIST = `Monitor: M-301\n${HEADER}A,B1,05/2023,88 %,12.09.2026\nB,B4,05/2023,86 %,12.09.2026\n\nMonitor: M-302\n${HEADER}A,B2,01/2025,98 %,13.09.2026\nB,B3,01/2025,97 %,11.09.2026\n`;

describe("batteries listed below a line that names their device", () => {
  it("are in that device, list by list", () => {
    const { fleet, inputs } = read({ "list.csv": LIST });
    expect(fleet.packs.map(({ serial, device }) => [serial, device])).toEqual([
      ["B1", "M-301"],
      ["B4", "M-301"],
      ["B2", "M-302"],
      ["B3", "M-302"],
    ]);
    expect(inputs.map(({ rows, used, setAside }) => [rows, used, setAside])).toEqual([
      [2, 2, 0],
      [2, 2, 0],
    ]);
  });

  it("have their dates written alike: one of any list settles the order of day and month for all", () => {
    const days = read({ "list.csv": LIST }).fleet.runtimeTests.map(({ date }) => date);
    expect(days).toEqual(["2026-09-12", "2026-09-12", "2026-09-13", "2026-09-11"].map(dayFromIso));
  });
});

describe("a number that stands for about as many", () => {
  it.each(["~210", "ca. 210", "approx. 210", "≈210"])("is read as it stands: %j", (cycles) => {
    expect(read({ "packs.csv": `serial,cycles\nB1,${cycles}\nB2,90\n` }).fleet.packs[0]!.cycles).toBe(210);
  });
});
