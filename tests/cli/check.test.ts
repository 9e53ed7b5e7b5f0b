import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkSchema } from "../../src/out/check-schema.ts";
import { folderWith } from "../folders.ts";
import { SAMPLE, SAMPLE_NOTE, wanecast } from "./run-wanecast.ts";

const PACKS = "serial,item,in_service\n000817,pack-md,2022-04-11\n";

describe("wanecast check", () => {
  it("prints wanecast.check/1 and nothing else on stdout", () => {
    const { code, stdout, stderr } = wanecast(["check", SAMPLE, "--json"]);
    expect([code, stderr]).toEqual([0, SAMPLE_NOTE]);
    const check = JSON.parse(stdout);
    expect(checkSchema.safeParse(check).error).toBeUndefined();
    expect(check.asOf).toBe("2026-11-01");
    for (const input of check.inputs) expect(input.rows).toBe(input.used + input.setAside);
  });
  it("sets aside the sample's awkward rows, each with its line and reason", () => {
    const { setAside } = JSON.parse(wanecast(["check", SAMPLE, "--json"]).stdout);
    expect(setAside.map(({ file }: { file: string }) => file)).toEqual([
      "dated_stock.csv",
      "devices.csv",
      "runtime_tests.csv",
      "runtime_tests.csv",
    ]);
  });
  it("says the day where none is given, on stderr", () => {
    const folder = folderWith({ "packs.csv": PACKS });
    const { code, stdout, stderr } = wanecast(["check", folder]);
    expect(code).toBe(0);
    expect(stderr).toMatch(/^As of today, \d{4}-\d{2}-\d{2}; --as-of DATE plans from another day\.\n$/);
    expect(stdout).toMatch(/^Sheets as of \d{4}-\d{2}-\d{2}\n\n1 table with 1 row: 1 used, 0 set aside\./);
  });
  it("says the day where the sheets give one of another century, which is not used", () => {
    const folder = folderWith({ "packs.csv": PACKS, "policy.csv": "key,value\nas_of,2206-11-01\n" });
    const { stdout, stderr } = wanecast(["check", folder]);
    expect(stderr).toMatch(/^As of today, /);
    expect(stdout).not.toMatch(/^Sheets as of 2206/);
    expect(stdout).toContain("2206-11-01");
  });
  // ECMA-376 part 1, 18.2.20: a workbook has at least one tab, so that none can be written of nothing
  it("writes no clean sheet where no row was used", () => {
    const folder = folderWith({ "notes.txt": "call the workshop\n" });
    const clean = join(folder, "clean");
    const { stderr } = wanecast(["check", folder, "--as-of", "2026-11-01", "--write-clean", clean]);
    expect(stderr).toContain(`No clean sheet was written to ${clean}: no row was used.\n`);
    expect(existsSync(clean)).toBe(false);
  });
  it("reads standard input", () => {
    const { code, stdout } = wanecast(["check", "-", "--json", "--as-of", "2026-11-01"], { input: PACKS });
    expect(code).toBe(0);
    expect(JSON.parse(stdout).fleet.packs).toMatchObject([{ serial: "000817", in_service: "2022-04-11" }]);
  });
  it("reports the rest where a named file is missing, and exits with 3", () => {
    const folder = folderWith({ "packs.csv": PACKS });
    const gone = join(folder, "gone.csv");
    const { code, stdout, stderr } = wanecast(["check", folder, gone, "--json", "--as-of", "2026-11-01"]);
    expect(code).toBe(3);
    const check = JSON.parse(stdout);
    expect(check.refused).toEqual([
      { file: "gone.csv", code: "not-found", message: "There is no such file or folder." },
    ]);
    expect(check.fleet.packs).toHaveLength(1);
    expect(stderr).toBe("Refused:\ngone.csv: There is no such file or folder. [not-found]\n");
  });
  it("says what it refused once, in the report", () => {
    const gone = join(folderWith({}), "gone.csv");
    const { code, stdout, stderr } = wanecast(["check", SAMPLE, gone, "--as-of", "2026-11-01"]);
    expect([code, stderr]).toEqual([3, `${SAMPLE_NOTE}Refused:\n1 input; the report says why.\n`]);
    expect(stdout).toContain("- gone.csv: There is no such file or folder. [not-found]");
    const nothing = wanecast(["check", folderWith({ "notes.txt": "call the workshop\n" }), "--as-of", "2026-11-01"]);
    expect(nothing.stdout).toContain("No table was read. Findings: 0 errors, 0 warnings, 1 note.");
    expect(nothing.stderr).toBe("Refused:\nNo table was found in the inputs; the findings say why.\n");
  });
  it("exits with 3 where nothing is a table", () => {
    const folder = folderWith({ "notes.txt": "call the workshop\n" });
    const { code, stdout } = wanecast(["check", folder, "--json", "--as-of", "2026-11-01"]);
    expect(code).toBe(3);
    expect(JSON.parse(stdout).inputs).toEqual([]);
  });
  it("names folders' files by their own names only", () => {
    const { stdout } = wanecast(["check", SAMPLE, "--json"]);
    expect(stdout).not.toContain("sample-data");
  });
  it("--fail-on exits with 4 where its condition is met, with 0 where not", () => {
    const folder = folderWith({ "packs.csv": PACKS });
    const day = ["--as-of", "2026-11-01"];
    expect(wanecast(["check", folder, "--fail-on", "set-aside", "--fail-on", "warning", ...day]).code).toBe(0);
    const { code, stderr } = wanecast(["check", SAMPLE, "--fail-on", "warning,set-aside"]);
    expect(code).toBe(4);
    expect(stderr).toBe(
      `${SAMPLE_NOTE}--fail-on warning: a finding is a warning or an error.\n--fail-on set-aside: a row was set aside.\n`,
    );
  });
  it("--out writes the check and the rows set aside", () => {
    const out = join(folderWith(), "new", "folder");
    const { code, stderr } = wanecast(["check", SAMPLE, "--out", out]);
    expect([code, stderr]).toEqual([0, `${SAMPLE_NOTE}Written to ${out}: check.json, set-aside.csv.\n`]);
    expect(readdirSync(out).sort()).toEqual(["check.json", "set-aside.csv"]);
    expect(readFileSync(join(out, "check.json"), "utf8")).toBe(wanecast(["check", SAMPLE, "--json"]).stdout);
  });
  it("names the folders inside a folder whose sheets it did not read", () => {
    const folder = folderWith({
      "packs.csv": PACKS,
      "north/tests.xlsx": "",
      "south one/tests.csv": "serial,date,minutes\n000817,2024-04-11,200\n",
      "notes/readme.txt": "",
      ".hidden/packs.csv": PACKS,
    });
    const check = (...inputs: string[]) => wanecast(["check", ...inputs, "--as-of", "2026-11-01"]).stderr;
    const [north, south] = [join(folder, "north"), join(folder, "south one")];
    expect(check(folder)).toBe(
      `Not read: sheets in the inner folders ${north}, ${south}; name them as well if they belong to the fleet.\n`,
    );
    expect(check(folder, `${south}/`)).toBe(
      `Not read: sheets in the inner folder ${north}; name it as well if it belongs to the fleet.\n`,
    );
  });
  it("shows no escape code where it does not write to a terminal", () => {
    expect(wanecast(["check", SAMPLE]).stdout).not.toContain("\u001b");
  });
});
