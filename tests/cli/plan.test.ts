import { cpSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { planSchema } from "../../src/out/plan-schema.ts";
import { folderWith, SAMPLE, wanecast } from "./run-wanecast.ts";

const FILES = ["orders.csv", "packs.csv", "page.html", "plan.json", "set-aside.csv"];

describe("wanecast plan", () => {
  const json = wanecast(["plan", SAMPLE, "--json"]);

  it("--json prints a valid plan.json and nothing else", () => {
    expect([json.code, json.stderr]).toEqual([0, ""]);
    const plan = JSON.parse(json.stdout);
    expect(planSchema.safeParse(plan).error).toBeUndefined();
    expect([plan.asOf, plan.horizon]).toEqual(["2026-11-01", { from: "2026-11", to: "2029-10" }]);
  });
  it("two runs give the same bytes, whatever the order of the inputs and the time zone", () => {
    const files = readdirSync(SAMPLE)
      .filter((name) => name.endsWith(".csv"))
      .map((name) => join(SAMPLE, name));
    const again = wanecast(["plan", ...files.reverse(), "--json"], { env: { TZ: "Pacific/Auckland" } });
    expect(again.stdout === json.stdout).toBe(true);
  });
  it("--out writes the plan's files, whole, and says so on stderr", () => {
    const out = join(folderWith(), "out");
    const { code, stdout, stderr } = wanecast(["plan", SAMPLE, "--out", out]);
    expect([code, stderr]).toEqual([
      0,
      `Written to ${out}: plan.json, orders.csv, packs.csv, set-aside.csv, page.html.\n`,
    ]);
    expect(readdirSync(out).sort()).toEqual(FILES);
    expect(readFileSync(join(out, "plan.json"), "utf8")).toBe(json.stdout);
    expect(stdout).toMatch(/^Plan as of 2026-11-01, 36 months: 2026-11 to 2029-10\n\nBy the end of 2027-10 you will/);
    for (const heading of ["Needed", "Next orders", "Spend by fiscal year", "Devices short", "Sheets", "Cautions"]) {
      expect(stdout).toMatch(new RegExp(`^${heading}`, "m"));
    }
    for (const line of stdout.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(80);
  });
  it("--out never writes over an input", () => {
    const folder = folderWith();
    cpSync(SAMPLE, folder, { recursive: true });
    const before = readFileSync(join(folder, "packs.csv"), "utf8");
    const { code, stderr } = wanecast(["plan", folder, "--out", folder]);
    expect(code).toBe(2);
    expect(stderr).toBe(`error: --out ${folder} would write over the input packs.csv; choose another folder.\n`);
    expect(readFileSync(join(folder, "packs.csv"), "utf8")).toBe(before);
    expect(readdirSync(folder)).not.toContain("plan.json");
  });
  it("stops with 3 and prints no plan where a named file is missing", () => {
    const { code, stdout, stderr } = wanecast(["plan", SAMPLE, "gone.csv", "--json"]);
    expect([code, stdout]).toEqual([3, ""]);
    expect(stderr).toBe("Refused:\ngone.csv: There is no such file or folder. [not-found]\n");
  });
  it("stops with 3 where no table is found", () => {
    const { code, stdout, stderr } = wanecast(["plan", folderWith(), "--as-of", "2026-11-01"]);
    expect([code, stdout]).toEqual([3, ""]);
    expect(stderr).toBe("Refused:\nNo table was found in the inputs; `wanecast check` says how each was read.\n");
  });
  it("--fail-on late exits with 4: the sample's AED batteries should have been ordered before", () => {
    const { code, stdout, stderr } = wanecast(["plan", SAMPLE, "--json", "--fail-on", "late"]);
    expect([code, stderr]).toEqual([4, "--fail-on late: an order-by date has already passed.\n"]);
    expect(stdout === json.stdout).toBe(true);
    const late = JSON.parse(stdout).orders.filter((line: { late: boolean }) => line.late);
    expect(late.map((line: { item: string }) => line.item)).toContain("primary-aed");
  });
  it("an option wins over --policy, which wins over the sheet", () => {
    const args = ["plan", SAMPLE, "--json", "--policy", "horizon_months=12", "--policy", "as_of=2026-09-01"];
    const plan = JSON.parse(wanecast([...args, "--as-of", "2026-10-01"]).stdout);
    expect([plan.asOf, plan.horizon]).toEqual(["2026-10-01", { from: "2026-10", to: "2027-09" }]);
    expect(plan.policy.spares_percent).toBe(10);
  });
});
