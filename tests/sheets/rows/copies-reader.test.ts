import { expect, it } from "vitest";
import { columnOfField, sheetSpec } from "../../../src/fleet/columns.ts";
import { FindingLog } from "../../../src/sheets/finding-log.ts";
import { copiesReader } from "../../../src/sheets/rows/copies-reader.ts";
import type { Table } from "../../../src/sheets/tables/table.ts";

it("takes the first of several copies, nothing where they differ, and spellings of a name for the same", () => {
  const table = { grid: { file: "a.csv", sheet: null }, header: ["Site", "Location", "Where"] } as unknown as Table;
  const log = new FindingLog();
  const site = columnOfField(sheetSpec("devices"), "site");
  const read = copiesReader(table, site, [0, 1, 2], ({ cells }, at) => cells[at] ?? null, log);
  const valueIn = (...cells: (string | null)[]) => read({ line: 7, cells });
  expect(valueIn(null, "North", null)).toBe("North");
  expect(valueIn("North  Depot", "north depot", null)).toBe("North  Depot");
  expect(valueIn(null, null, null)).toBeNull();
  expect(log.all()).toEqual([]);
  expect(valueIn("North", null, "South")).toBeNull();
  expect(log.all()).toMatchObject([{ code: "copies-disagree", line: 7, column: 3, value: "South" }]);
});
