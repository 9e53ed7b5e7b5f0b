import { describe, expect, it } from "vitest";
import { readSheets } from "../../src/sheets/read-sheets.ts";

const read = (name: string, bytes: number[]) =>
  readSheets([{ name, bytes: Uint8Array.from(bytes) }], { asOf: 20_000, dateOrder: null });

describe("readSheets: files that hold no text", () => {
  it.each([
    ["register.xlsx", [0x50, 0x4b, 0x03, 0x04]],
    ["register.csv", [0x50, 0x4b, 0x03, 0x04]],
    ["old.XLS", [0xd0, 0xcf, 0x11, 0xe0]],
  ])("refuses %s and says the way out", (name, bytes) => {
    expect(read(name, bytes).refused).toEqual([
      {
        file: name,
        code: "workbook",
        message: "Workbooks and archives are not read; save each tab as CSV and give those files.",
      },
    ]);
  });
  it("passes over what is no sheet at all", () => {
    expect(read("photo.jpg", [0xff, 0xd8, 0xff, 0xe0]).refused).toEqual([]);
    expect(read("backup.zip", [0x50, 0x4b, 0x03, 0x04]).refused).toEqual([]);
  });
});
