import { expect, it } from "vitest";
import { withDistinctNames } from "../../src/sheets/distinct-names.ts";
import { textFile } from "./sheet-file.ts";

it("withDistinctNames: each file but the first of a name has its number, before what says its kind", () => {
  const names = ["packs.csv", "stock.xlsx", "packs.csv", "packs (2).csv", "packs.csv", "list", "list"];
  expect(withDistinctNames(names.map((name) => textFile(name, ""))).map(({ name }) => name)).toEqual([
    "packs.csv",
    "stock.xlsx",
    "packs (2).csv",
    "packs (2) (2).csv",
    "packs (3).csv",
    "list",
    "list (2)",
  ]);
});
