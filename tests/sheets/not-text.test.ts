import { describe, expect, it } from "vitest";
import { readSheets } from "../../src/sheets/read-sheets.ts";

const read = (name: string, bytes: number[], fromFolder = false) =>
  readSheets([{ name, bytes: Uint8Array.from(bytes), fromFolder }], { asOf: 20_000, dateOrder: null });
const ascii = (text: string) => Array.from(text, (letter) => letter.charCodeAt(0));
const utf16 = (text: string) => ascii(text).flatMap((code) => [code, 0]);
const OLE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

describe("readSheets: files that are no sheet", () => {
  it.each([
    ["register.xlsx", [0x50, 0x4b, 0x03, 0x04], "truncated"],
    ["old.xls", OLE, "xls"],
    ["locked.xlsx", [...OLE, ...utf16("EncryptedPackage")], "encrypted"],
    ["photo.csv", [0x89, 0x50, 0x4e, 0x47], "image"],
    ["scan.xlsx", [0xff, 0xd8, 0xff, 0xe0], "image"],
    ["report.csv", ascii("%PDF-1.7"), "pdf"],
    ["page.xls", ascii("<html><table></table></html>"), "html"],
    ["plan.json", ascii('{"format":"wanecast.plan/1"}'), "json"],
    ["orders.ics", ascii("BEGIN:VCALENDAR"), "calendar"],
    ["data.csv.gz", [0x1f, 0x8b, 0x08], "archive"],
  ])("refuses %s by its bytes and says the way out", (name, bytes, code) => {
    const { refused } = read(name, bytes);
    expect(refused).toMatchObject([{ file: name, code }]);
    expect(refused[0]?.message).toMatch(/; .+\.$/);
  });

  it("passes over a folder's other files with a finding, and refuses a broken sheet among them", () => {
    const photo = read("photo.jpg", [0xff, 0xd8, 0xff, 0xe0], true);
    expect(photo.refused).toEqual([]);
    expect(photo.findings).toMatchObject([{ code: "no-table", severity: "info", file: "photo.jpg" }]);
    expect(read("fleet.xlsx", [0x50, 0x4b, 0x03, 0x04], true).refused).toMatchObject([{ code: "truncated" }]);
  });
});
