import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith, wanecast } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

const HEAD = ["format", "engine", "asOf", "horizon", "policy", "inputs", "findings"];
const plan = JSON.parse(wanecast(["plan", folderWith(SMALL_FLEET), "--json"]).stdout);

describe.each([
  ["packs", ["fadeGroups", "packs"], "packs.csv"],
  ["dates", ["datedStock", "crowdedMonths", "swapCalendar", "swapCapacity", "moves", "useRates"], "dates.csv"],
  ["orders", ["demand", "orders", "budget", "deferrals", "short"], "orders.csv, orders.ics, budget.txt"],
])("wanecast %s", (verb, own, file) => {
  it("--json prints the head keys, its own and the cautions, as the plan has them", () => {
    const part = JSON.parse(wanecast([verb, folderWith(SMALL_FLEET), "--json"]).stdout);
    expect(Object.keys(part)).toEqual([...HEAD, ...own, "cautions"]);
    // dates forecasts no pack: the plan says more of its cautions, and nothing of what stands behind the dates
    for (const key of Object.keys(part)) {
      if (key === "cautions") expect(plan.cautions).toEqual(expect.arrayContaining(part.cautions));
      else if (key in plan) expect(part[key]).toEqual(plan[key]);
    }
  });
  it("--out writes its file", () => {
    const out = folderWith();
    expect(wanecast([verb, folderWith(SMALL_FLEET), "--out", out]).stderr).toBe(`Written to ${out}: ${file}.\n`);
    expect(readFileSync(join(out, file.split(",")[0]!), "utf8")).toMatch(/^[a-z_,]+\r\n/);
  });
  it("fits the terminal and carries the cautions", () => {
    const { code, stdout } = wanecast([verb, folderWith(SMALL_FLEET)], { env: { COLUMNS: "100" } });
    expect(code).toBe(0);
    expect(stdout).toContain("This is a planning aid only.");
    for (const line of stdout.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(100);
  });
});

describe("wanecast page", () => {
  it("prints one page with the plan and the rows inside", () => {
    const { code, stdout, stderr } = wanecast(["page", folderWith(SMALL_FLEET)]);
    expect([code, stderr]).toEqual([0, ""]);
    const json = /<script type="application\/json" id="wanecast-data">(.*?)<\/script>/s.exec(stdout)?.[1] ?? "{}";
    const data = JSON.parse(json);
    expect(data.plan).toEqual(plan);
    expect(data.reading.fleet.packs).toHaveLength(3);
  });
  it("--out writes it and says that it holds the rows", () => {
    const out = folderWith();
    const { stdout, stderr } = wanecast(["page", folderWith(SMALL_FLEET), "--out", out]);
    expect(stdout).toBe("");
    expect(stderr).toBe(
      `Written to ${out}: page.html. It holds the fleet's rows: pass it on as you would the sheets.\n`,
    );
    expect(readFileSync(join(out, "page.html"), "utf8")).toContain('id="wanecast-data"');
  });
});
