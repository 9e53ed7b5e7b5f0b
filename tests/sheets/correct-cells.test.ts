import { expect, it } from "vitest";
import type { Grid } from "../../src/sheets/grid.ts";
import { withCorrections } from "../../src/sheets/workbook/correct-cells.ts";

const grid = (sheet: string): Grid => ({
  file: "register.xlsx",
  sheet,
  rows: [
    { line: 3, cells: ["serial", "made"] },
    { line: 5, cells: ["A1"] },
  ],
  sha256: "",
  semicolons: false,
  openQuotes: [],
  hidden: { tab: false, rows: 0, columns: 0 },
  spans: [],
});

it("withCorrections puts text into the cell of a line and column, beyond the row's end too, and later ones win", () => {
  const given = [grid("Fleet"), grid("Store")];
  const [fleet, store] = withCorrections(given, [
    { sheet: "Fleet", line: 5, column: 3, text: "2024" },
    { sheet: "Fleet", line: 5, column: 3, text: "2025" },
    { sheet: "Fleet", line: 4, column: 1, text: "no such line" },
  ]);
  expect(fleet!.rows.map(({ cells }) => cells)).toEqual([
    ["serial", "made"],
    ["A1", null, "2025"],
  ]);
  expect(store).toBe(given[1]);
  expect(given[0]!.rows[1]!.cells).toEqual(["A1"]);
});
