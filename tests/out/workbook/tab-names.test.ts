import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tabNames } from "../../../src/out/workbook/tab-names.ts";

// Source: what spreadsheet programs take as a tab's name: 1 to 31 characters, none of [ ] : * ? / \, no apostrophe at
// either end, unique without regard to case, and not History (from memory)
describe("tabNames", () => {
  it("keeps plain names and mends the others", () => {
    expect(tabNames(["Totals", "Fenwold Batteries", "A/B: [north]", "'quoted'", "", "History"])).toEqual([
      "Totals",
      "Fenwold Batteries",
      "A B north",
      "quoted",
      "Unnamed",
      "History (2)",
    ]);
  });

  it("tells names apart that differ in case only, or beyond what a tab can hold", () => {
    const long = "Quillmark Supplies and Sundries of the North";
    expect(tabNames(["totals", "Totals", long, `${long} East`])).toEqual([
      "totals",
      "Totals (2)",
      "Quillmark Supplies and Sundries",
      "Quillmark Supplies and Sund (2)",
    ]);
  });

  it("gives names that a workbook takes, whatever the suppliers are called", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "grapheme", maxLength: 60 })), (names) => {
        const tabs = tabNames(names);
        expect(new Set(tabs.map((tab) => tab.toLowerCase())).size).toBe(names.length);
        for (const tab of tabs) {
          expect(tab.length).toBeGreaterThan(0);
          expect(tab.length).toBeLessThanOrEqual(31);
          expect(tab).not.toMatch(/[[\]:*?/\\]|^'|'$|^history$/i);
          expect(() => encodeURIComponent(tab)).not.toThrow();
        }
      }),
      { seed: 31, numRuns: 300 },
    );
  });
});
