import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");

/** Files of code below a folder with more lines than that. */
const longer = (folder: string, most: number) =>
  readdirSync(join(ROOT, folder), { recursive: true })
    .map((name) => `${folder}/${name}`)
    .filter((path) => path.endsWith(".ts"))
    .filter((path) => readFileSync(join(ROOT, path), "utf8").split("\n").length - 1 > most);

/** Lists of texts and of sheets, which grow by entries and hold no thought that could be parted. */
const LISTS = ["src/sheets/finding-codes.ts", "web/strings.ts", "tests/sheets/awkward/"];
const isList = (path: string) => LISTS.some((list) => path.startsWith(list));

it("no file of code is over 300 lines, but lists", () => {
  const long = ["src", "cli", "web", "sample-data"].flatMap((folder) => longer(folder, 300));
  expect(long.filter((path) => !isList(path))).toEqual([]);
});
it("no file of tests is over 350 lines, but lists", () => {
  expect(longer("tests", 350).filter((path) => !isList(path))).toEqual([]);
});
