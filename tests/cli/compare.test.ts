import { cpSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith } from "../folders.ts";
import { wanecast } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

const sheets = folderWith(SMALL_FLEET);

describe("wanecast compare", () => {
  it("sets one fleet under two policies side by side", () => {
    const { code, stdout, stderr } = wanecast([
      "compare",
      sheets,
      "--policy",
      "service_level=0.8",
      "--against",
      "service_level=0.99",
    ]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("A: service_level=0.8, as of 2026-11-01");
    expect(stdout).toContain("Policy: service_level 0.8 against 0.99.");
  });

  // By hand: what --policy sets holds for both plans, save where --against sets it for the second
  it("names every value that was asked for, each plan's own", () => {
    const asked = ["--policy", "service_level=0.8", "--policy", "spares_percent=10", "--against", "service_level=0.99"];
    const { a, b } = JSON.parse(wanecast(["compare", sheets, ...asked, "--json"]).stdout).plans;
    expect([a.label, b.label]).toEqual([
      "service_level=0.8, spares_percent=10",
      "service_level=0.99, spares_percent=10",
    ]);
  });

  // By hand: the second plan is asked for another day than both, and so is of that day
  it("plans from the day that --against names, whatever --as-of says", () => {
    const asked = ["--as-of", "2026-11-02", "--against", "as_of=2026-11-30"];
    const { a, b } = JSON.parse(wanecast(["compare", sheets, ...asked, "--json"]).stdout).plans;
    expect([a.asOf, b.asOf]).toEqual(["2026-11-02", "2026-11-30"]);
  });

  it("compares two saved plans, on stdout and as a file", () => {
    const [before, after, out] = [folderWith(), folderWith(), folderWith()];
    wanecast(["plan", sheets, "--out", before]);
    wanecast(["plan", sheets, "--out", after, "--as-of", "2026-12-01"]);
    const plans = [join(before, "plan.json"), join(after, "plan.json")];
    const { code, stdout, stderr } = wanecast(["compare", ...plans, "--json", "--out", out]);
    expect([code, stderr]).toEqual([0, `Written to ${out}: compare.json.\n`]);
    const comparison = JSON.parse(stdout);
    expect(comparison.format).toBe("wanecast.compare/1");
    expect(comparison.plans.a.label).toBe(`${basename(before)}/plan.json`);
    expect(comparison.months).toEqual({ from: "2026-12", to: "2028-04" });
    expect(readFileSync(join(out, "compare.json"), "utf8")).toBe(stdout);
    // folders of one name tell the plans apart no better than the files do
    const alike = ["x", "y"].map((name) => join(out, name, "out", "plan.json"));
    plans.forEach((plan, at) => {
      cpSync(plan, alike[at]!);
    });
    const { a, b } = JSON.parse(wanecast(["compare", ...alike, "--json"]).stdout).plans;
    expect([a.label, b.label]).toEqual(alike);
  });

  it.each([
    ["sheets without a second policy", ["devices.csv"], 2, "Give two saved plans"],
    ["a file that is no plan", ["other.json", "other.json"], 3, "The file holds no plan"],
    ["a plan that lacks its parts", ["plan.json", "plan.json"], 3, "does not hold to its format"],
    [
      "a plan of another format",
      ["later.json", "plan.json"],
      3,
      "The plan's format is wanecast.plan/2, not wanecast.plan/1",
    ],
    ["a plan that is cut off", ["cut.json", "plan.json"], 3, "The file holds no plan"],
    [
      "a plan that is not there",
      ["gone.json", "plan.json"],
      3,
      "gone.json: There is no such file or folder. [not-found]",
    ],
    ["a plan beside a sheet", ["plan.json", "devices.csv"], 2, "not a mixture"],
  ])("refuses %s", (_, names, exit, message) => {
    const folder = folderWith({
      "plan.json": '{"format":"wanecast.plan/1"}',
      "later.json": '{"format":"wanecast.plan/2"}',
      "cut.json": '{"format":"wanecast.pl',
      "other.json": "{}",
      "devices.csv": "device\nD1\n",
    });
    const { code, stdout, stderr } = wanecast(["compare", ...names.map((name) => join(folder, name))]);
    expect([code, stdout]).toEqual([exit, ""]);
    expect(stderr).toContain(message);
  });

  it("names --against where that is not followed, and plans in folders where it finds them", () => {
    const wrong = wanecast(["compare", sheets, "--against", "service_level"]);
    expect(wrong).toEqual({
      code: 2,
      stdout: "",
      stderr: 'error: --against takes KEY=VALUE, such as horizon_months=24, not "service_level".\n',
    });
    const folders = [folderWith({ "plan.json": "{}" }), folderWith({ "plan.json": "{}" })];
    expect(wanecast(["compare", ...folders]).stderr).toContain(
      `The folders hold plans: wanecast compare ${folders.map((folder) => join(folder, "plan.json")).join(" ")}`,
    );
  });
});
