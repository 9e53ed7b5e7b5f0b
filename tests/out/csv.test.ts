import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { csvText } from "../../src/out/csv.ts";

describe("csvText", () => {
  // Source: RFC 4180 section 2, rules 1, 6 and 7: CRLF ends a record, fields with a comma, a quote or a line break
  // are quoted, and a quote inside is doubled (checked against the RFC's own examples)
  it("writes RFC 4180", () => {
    expect(csvText(["aaa", "bbb", "ccc"], [["zzz", "yyy", "xxx"]])).toBe("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
    expect(csvText(["aaa", 'b"bb', "ccc"], [])).toBe('aaa,"b""bb",ccc\r\n');
    expect(csvText(["aaa", "b\r\nbb", "ccc"], [["zzz", "yyy", "xxx"]])).toBe('aaa,"b\r\nbb",ccc\r\nzzz,yyy,xxx\r\n');
    expect(csvText(["a", "b", "c"], [[null, null, null]])).toBe("a,b,c\r\n,,\r\n");
  });

  // Cells starting with = + - @ TAB CR are taken for formulas: common practice, no source
  it.each(["=1+1", "+1-2", "-cmd|x", "@SUM(A1)", "\tx", "\rx", "-1+1", "+41", "\uff1d1+1"])(
    "guards %j with an apostrophe",
    (cell) => {
      const [, row] = Papa.parse<string[]>(csvText(["text"], [[cell]])).data;
      expect(row).toEqual([`'${cell}`]);
    },
  );

  // where semicolons part cells, as in much of Europe, a spreadsheet parts at them inside our quotes, too
  it.each([
    ["x;=1+1;y", "x;'=1+1;y"],
    ["x\n@SUM(A1)", "x\n'@SUM(A1)"],
    ["10:38; -5", "10:38; '-5"],
  ])("guards %j where a cell may end inside it", (cell, written) => {
    const [, row] = Papa.parse<string[]>(csvText(["text"], [[cell]]), { delimiter: "," }).data;
    expect(row).toEqual([written]);
  });

  it.each([-5, 0.25, "-5", "-0.25", "a=b", "2027-01-01", "'x"])("leaves %j alone", (cell) => {
    const [, row] = Papa.parse<string[]>(csvText(["text"], [[cell]])).data;
    expect(row).toEqual([String(cell)]);
  });
});
