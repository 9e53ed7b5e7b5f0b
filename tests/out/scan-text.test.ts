import { describe, expect, it } from "vitest";
import { scanText } from "../../src/out/scan-text.ts";
import { readScans } from "../../src/sheets/read-scans.ts";
import { AS_OF, textFile } from "../sheets/sheet-file.ts";

/** What is said of scans, one a line. */
const told = (scans: string, width = 80) =>
  scanText(readScans(textFile("-", scans), { asOf: AS_OF, dateOrder: null }), { width });

// GTIN 09506000134352: its check digit by hand, 3 * (0+5+6+0+1+4+5) + (9+0+0+0+3+3) = 78, and 80 - 78 = 2
const GOOD = "(01)09506000134352(17)270131(10)A1";

describe("scanText", () => {
  it("counts the scans and no more where all were read", () => {
    expect(told(`${GOOD}\n`).trimEnd()).toBe("1 scan: 1 used, 0 set aside.");
  });

  it("names the line of a scan that is set aside, and its text", () => {
    const text = told(`${GOOD}\nhello\n${GOOD.replace("A1", "A2")}\n`);
    expect(text).toContain("3 scans: 2 used, 1 set aside.");
    expect(text).toMatch(/Scans set aside\nstandard input, line 2: .*"hello"/);
    expect(text).toContain("[label-unreadable]");
  });

  it("says that none came, rather than that none were wrong", () => {
    expect(told("\n \n").trimEnd()).toBe("No scan came on standard input.");
  });

  it("stays within the width that it is given", () => {
    const lines = told(`${"x".repeat(30)} ${"y".repeat(30)}\nhello\n`, 40).split("\n");
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(40);
  });
});
