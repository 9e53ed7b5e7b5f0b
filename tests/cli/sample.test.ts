import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { sampleSheets } from "../../sample-data/script/sample-sheets.ts";
import { folderWith } from "../folders.ts";
import { SAMPLE, wanecast } from "./run-wanecast.ts";

const text = (folder: string, name: string) => readFileSync(join(folder, name), "utf8");

describe("the invented fleet", () => {
  it("is what its script makes, byte for byte", () => {
    const sheets = sampleSheets();
    for (const sheet of sheets) expect(text(SAMPLE, sheet.name), sheet.name).toBe(sheet.text);
    const files = readdirSync(SAMPLE).filter((name) => name.endsWith(".csv"));
    expect(files.sort()).toEqual(sheets.map(({ name }) => name).sort());
  });
  it("has about 60 devices, 130 packs, 700 runtime tests and 400 dated units", () => {
    const lines = (name: string) => text(SAMPLE, name).trim().split("\n").slice(1);
    expect(lines("devices.csv").length).toBeCloseTo(60, -1);
    expect(lines("packs.csv").length).toBeCloseTo(130, -1);
    expect(Math.abs(lines("runtime_tests.csv").length - 700)).toBeLessThan(40);
    const units = lines("dated_stock.csv").reduce((sum, line) => sum + Number(line.split(",")[3]), 0);
    // the last line is the total that someone added by hand
    expect(Math.abs(units / 2 - 400)).toBeLessThan(50);
  });
});

describe("wanecast sample", () => {
  it("writes the same files, and may be called again", () => {
    const folder = join(folderWith(), "sheets");
    for (let time = 0; time < 2; time++) expect(wanecast(["sample", folder]).code).toBe(0);
    const names = readdirSync(folder).sort();
    expect(names).toEqual(
      readdirSync(SAMPLE)
        .filter((name) => name.endsWith(".csv"))
        .sort(),
    );
    for (const name of names) expect(text(folder, name)).toBe(text(SAMPLE, name));
  });
  it("never writes over a sheet that says something else", () => {
    const folder = folderWith({ "packs.csv": "serial\nmine\n" });
    const { code, stderr } = wanecast(["sample", folder]);
    expect(code).toBe(2);
    expect(stderr).toBe(`error: ${join(folder, "packs.csv")} is there already and differs; choose an empty folder.\n`);
    expect(readdirSync(folder)).toEqual(["packs.csv"]);
    writeFileSync(join(folder, "packs.csv"), "");
    expect(wanecast(["sample", folder]).code).toBe(2);
  });
});
