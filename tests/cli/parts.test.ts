import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith } from "../folders.ts";
import { CAUTIONS, wanecast } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

const HEAD = ["format", "engine", "asOf", "horizon", "policy", "inputs", "findings"];
const plan = JSON.parse(wanecast(["plan", folderWith(SMALL_FLEET), "--json"]).stdout);

describe.each([
  ["packs", ["fadeGroups", "packs", "suddenFailures", "earlySigns"], "packs.csv"],
  [
    "dates",
    [
      "datedStock",
      "heldStock",
      "openedTooLong",
      "crowdedMonths",
      "swapCalendar",
      "moves",
      "lapses",
      "places",
      "swapCapacity",
      "useRates",
      "routine",
    ],
    "dates.csv",
  ],
  ["orders", ["demand", "orders", "budget", "deferrals", "short"], "orders.csv, orders.xlsx, orders.ics, budget.txt"],
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

it.each(["plan", "orders"])("%s says that its order files hold what the budget has no room for", (verb) => {
  const writes = (budget: string) =>
    wanecast([verb, folderWith(SMALL_FLEET), "--out", folderWith(), "--policy", `budget_per_fiscal_year=${budget}`]);
  const uncut =
    "The order files hold the whole schedule, over the budget too; `wanecast orders` lists what to defer.\n";
  expect(writes("100").stderr).toContain(uncut);
  expect(writes("99999").stderr).not.toContain(uncut);
});

describe("wanecast dates", () => {
  // By hand: no use is logged, so that what is fitted lapses; the store's one unit replaces one of MD-1's in November
  it("tells months, places and what lapses", () => {
    const { code, stdout, stderr } = wanecast(["dates", folderWith(SMALL_FLEET)]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toBe(`Dated stock as of 2026-11-01, 18 months: 2026-11 to 2028-04

5 dated units in 3 rows. A unit is to be swapped 14 days before it expires;
opened gel once its days after opening are over, if sooner.

Units to swap by month
2026-11      2: pads 2
2027-09      3: pads 3

Places with most to swap
place  overdue  to 2027-01  all to 2027-10
-----  -------  ----------  --------------
MD-1         0           2               2
MD-2         0           0               2
Store        0           0               1

What lapses if nothing is done
item  units due  used before  lapse unused
----  ---------  -----------  ------------
pads          5          1.0           4.0

Swap visits a month
A visit swaps all that falls due at one place in one month. 1 visit a month is
the fewest that meets every expiry. For the calendar of the visits, set
swaps_per_month (--policy swaps_per_month=1).

Stock and use that do not fit
note: dated_stock.csv, line 4: "Store" is neither a device nor a site; it is
  read as a store, whose 1 unit can serve every place. [place-read-as-store]
  Fix: Nothing to do if it is a store; else write the device's name as the
    devices sheet has it.

${CAUTIONS}`);
  });

  it("--fail-on looks at orders and devices short as well, and at what was found in the stock", () => {
    const sheets = folderWith({
      ...SMALL_FLEET,
      "dated_stock.csv": `${SMALL_FLEET["dated_stock.csv"]}pads,P3,2028-01-31,3,MD-2\n`,
    });
    const { code, stderr } = wanecast(["dates", sheets, "--fail-on", "late,warning"]);
    expect(code).toBe(4);
    expect(stderr).toBe(
      "--fail-on late: an order-by date has already passed.\n--fail-on warning: a finding is a warning or an error.\n",
    );
    expect(wanecast(["dates", folderWith(SMALL_FLEET), "--fail-on", "warning"]).code).toBe(0);
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
