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

it("no file of code is over 300 lines, but the page's list of texts", () => {
  expect(["src", "cli", "web", "sample-data"].flatMap((folder) => longer(folder, 300))).toEqual(["web/strings.ts"]);
});
it("no file of tests is over 350 lines", () => {
  expect(longer("tests", 350)).toEqual([]);
});
