import fc from "fast-check";
import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { sheetBytes } from "./fuzz-sheets.ts";
import { readingFault } from "./reading-fault.ts";
import { AS_OF, textFile } from "./sheet-file.ts";

/** Inputs of the first test; `npm run bench -- fuzz` reads 100,000 others. */
const RUNS = 2000;

const options = { asOf: AS_OF, dateOrder: null };

describe("readSheets: any bytes", () => {
  it("never throws, loses no row and touches no prototype", () => {
    fc.assert(
      fc.property(sheetBytes, (bytes) => {
        expect(readingFault(bytes)).toBeNull();
      }),
      { seed: 20261101, numRuns: RUNS },
    );
  });

  it("opens or refuses a workbook with any bytes changed or cut off", async () => {
    const rows = [
      ["serial", "cycles"],
      ["A1", 4],
      ["A2", 5],
    ];
    const whole = await writeXlsx({ sheets: [{ name: "Packs", rows }] });
    const change = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(change, fc.nat(whole.length), async (changes, length) => {
        const bytes = whole.slice(0, length % 3 === 0 ? length : whole.length);
        for (const [at, byte] of changes) if (at < bytes.length) bytes[at] = byte;
        const files = [{ name: "f.xlsx", bytes }];
        await openWorkbooks(files);
        const { inputs, refused } = readSheets(files, options);
        for (const table of inputs) expect(table.rows).toBe(table.used + table.setAside);
        for (const { message } of refused) expect(message).toMatch(/\.$/);
      }),
      { seed: 9, numRuns: 300 },
    );
  });

  it.each([
    ["one cell of digits", "1".repeat(1_000_000)],
    ["one cell of blanks and words", "a ".repeat(500_000)],
    ["one cell of separators of dates", "1/".repeat(500_000)],
    ["one cell of commas in quotes", `"${",1".repeat(500_000)}"`],
    ["one cell of brackets", "(01)".repeat(250_000)],
    ["one cell of plus signs", "+".repeat(1_000_000)],
    ["one cell of apostrophes", "'".repeat(1_000_000)],
  ])("reads a megabyte in %s in time that grows with its length", (_, cell) => {
    const texts = [
      `item,expiry,quantity,label,lot\n${cell},${cell},${cell},${cell},${cell}\n`,
      `${cell}\nitem,expiry\nA,2027-01-01\n`,
      `serial,date,minutes,percent,${cell}\nA,2026-01-01,${cell},${cell},x\n`,
    ];
    for (const text of texts) {
      const { inputs } = readSheets([textFile("f.csv", text)], options);
      for (const table of inputs) expect(table.rows).toBe(table.used + table.setAside);
    }
  });
});
