import { describe, expect, it } from "vitest";
import { correctRow } from "../../../web/engine/correct-row.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const LINES = ["serial,date,percent", "P1,2025-01-04,99", "P1,2025-02-30,98", "P2,2025-03-04,97"];

/** What a sheet holds after the date on a line was corrected; every expected text is by hand. */
function corrected(text: string, line: number): string {
  const file = { name: "tests.csv", bytes: bytesOf(text) };
  const changes = [{ column: 2, text: "2025-02-28" }];
  return new TextDecoder().decode(correctRow(file, { file: file.name, sheet: null, line }, changes).bytes);
}

describe("correctRow", () => {
  it.each([
    ["without quotes", LINES, 3, ["serial,date,percent", "P1,2025-01-04,99", "P1,2025-02-28,98", "P2,2025-03-04,97"]],
    [
      "with a quoted cell over two lines above it",
      ["serial,date,note", 'P1,2025-01-04,"new\nfuse"', "P1,2025-02-30,ok"],
      4,
      ["serial,date,note", 'P1,2025-01-04,"new\nfuse"', "P1,2025-02-28,ok"],
    ],
    [
      "with a cell over two lines of its own",
      ["serial,date,note", 'P1,2025-02-30,"new\nfuse"', "P2,2025-03-04,ok"],
      2,
      ["serial,date,note", 'P1,2025-02-28,"new\nfuse"', "P2,2025-03-04,ok"],
    ],
    [
      "below a quote that never closes",
      ["serial,date,note", '"P1,2025-01-04,ok', "P1,2025-02-30,ok", "P2,2025-03-04,ok"],
      3,
      ["serial,date,note", '"P1,2025-01-04,ok', "P1,2025-02-28,ok", "P2,2025-03-04,ok"],
    ],
    [
      "below a line that names the separator",
      ["sep=;", "serial;date;percent", "P1;2025-02-30;98,5"],
      3,
      ["sep=;", "serial;date;percent", "P1;2025-02-28;98,5"],
    ],
  ])("replaces cells of one row of a text %s, and leaves the others as they stand", (_, before, line, after) => {
    expect(corrected(`${before.join("\n")}\n`, line)).toBe(`${after.join("\n")}\n`);
    expect(corrected(before.join("\r\n"), line)).toBe(after.join("\n"));
  });

  it("lengthens a row that ends before the cell", () => {
    expect(corrected("serial,date\nP1\n", 2)).toBe("serial,date\nP1,2025-02-28\n");
  });

  it("leaves a workbook's bytes, and carries the corrections beside them", () => {
    const file = { name: "fleet.xlsx", bytes: bytesOf("as it is") };
    const row = { file: file.name, sheet: "tests", line: 7 };
    const once = correctRow(file, row, [{ column: 2, text: "2025-02-28" }]);
    const twice = correctRow(once, row, [{ column: 3, text: "98" }]);
    expect(twice.bytes).toEqual(file.bytes);
    expect(twice.corrections).toEqual([
      { sheet: "tests", line: 7, column: 2, text: "2025-02-28" },
      { sheet: "tests", line: 7, column: 3, text: "98" },
    ]);
  });

  it("says where no row starts", () => {
    expect(() => corrected(LINES.join("\n"), 5)).toThrow("no record starts on line 5 of tests.csv");
  });
});
