import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { textTable } from "../../src/out/text-table.ts";
import { clipText, plainText, textWidth, wrapText } from "../../src/out/text-width.ts";

const rows = [
  { serial: "M22-001", site: "North Station", units: 12 },
  { serial: "M22-0002", site: "Harbour", units: 1234 },
];
type Row = (typeof rows)[number];
const columns = [
  { head: "serial", cell: (row: Row) => row.serial },
  { head: "site", cell: (row: Row) => row.site, clipTo: 6, dropRank: 1 },
  { head: "units", align: "right" as const, cell: (row: Row) => String(row.units) },
];

describe("textTable", () => {
  it("sets columns to their widest cell, numbers to the right", () => {
    expect(textTable(columns, rows, 80)).toBe(
      [
        "serial    site           units",
        "--------  -------------  -----",
        "M22-001   North Station     12",
        "M22-0002  Harbour         1234",
      ].join("\n"),
    );
  });
  it("clips what may be clipped where the line is too long", () => {
    expect(textTable(columns, rows, 24)).toBe(
      [
        "serial    site     units",
        "--------  -------  -----",
        "M22-001   North…      12",
        "M22-0002  Harbour   1234",
      ].join("\n"),
    );
  });
  it("clips what is too long for a name, also where names are kept whole", () => {
    const told = textTable(columns, [{ serial: "S".repeat(100_000), site: "North", units: 1 }], 80).split("\n");
    expect(told[2]!.startsWith(`${"S".repeat(199)}\u2026 `)).toBe(true);
    expect(told.every((line) => line.length < 300)).toBe(true);
  });
  it("sets heads in several lines before it clips or leaves out anything", () => {
    const long = columns.map((column) => (column.head === "units" ? { ...column, head: "units in all" } : column));
    expect(textTable(long, rows, 32)).toBe(
      [
        "                         units",
        "                            in",
        "serial    site             all",
        "--------  -------------  -----",
        "M22-001   North Station     12",
        "M22-0002  Harbour         1234",
      ].join("\n"),
    );
  });
  it("then leaves out columns and says which", () => {
    expect(textTable(columns, rows, 16)).toBe(
      [
        "serial    units",
        "--------  -----",
        "M22-001      12",
        "M22-0002   1234",
        "(not shown at",
        "this width:",
        "site)",
      ].join("\n"),
    );
  });
});

describe("text in a terminal", () => {
  // East Asian Width of Unicode Standard Annex 11: U+96FB is Wide, U+0301 combines
  it("textWidth: wide and combining characters", () => {
    expect(textWidth("電池")).toBe(4);
    expect(textWidth("e\u0301")).toBe(1);
  });
  it("plainText: no escape sequence of a sheet reaches the terminal", () => {
    expect(plainText("a\u001b[31mb\r\nc")).toBe("a [31mb c");
    // right-to-left override, Unicode Standard Annex 9: what follows would be shown backwards
    expect(plainText("EUR\u202e12")).toBe("EUR 12");
  });
  it("clipText: never wider than asked", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), fc.integer({ min: 1, max: 20 }), (text, width) => {
        expect(textWidth(clipText(text, width))).toBeLessThanOrEqual(width);
      }),
      { seed: 4 },
    );
  });
  it("wrapText: clips a word that no line could hold, as a cell of a million characters", () => {
    const lines = wrapText(`Lot ${"x".repeat(1_000_000)} lies here.`, 80).split("\n");
    expect(lines).toEqual(["Lot", `${"x".repeat(199)}\u2026`, "lies here."]);
  });
  it("wrapText: keeps a number and its percent sign in one line", () => {
    expect(wrapText("At 80 % and then", 5)).toBe("At\n80 %\nand\nthen");
  });
  it("wrapText: keeps every word, no line longer than asked unless a word is", () => {
    const text = "A pack that fails a test, is swollen, is damaged or is recalled comes out now.";
    const wrapped = wrapText(text, 30, "  ");
    expect(wrapped.split(/\s+/).join(" ")).toBe(text);
    for (const line of wrapped.split("\n")) expect(line.length).toBeLessThanOrEqual(30);
  });
});
