import { readdirSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { InputRefused } from "../../cli/exit-codes.ts";
import { runPage } from "../../cli/verbs/page.ts";
import { runPlan } from "../../cli/verbs/plan.ts";
import { folderWith } from "../folders.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

/** As for a fleet whose plan is longer than a text can be; one of that size takes minutes to plan. */
const noPage = () => null;

let notes = "";
beforeEach(() => {
  notes = "";
  vi.spyOn(process.stdout, "write").mockReturnValue(true);
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    notes += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

it("plan writes its other files where the fleet is too large for a page, and says so", async () => {
  const out = join(folderWith({}), "out");
  await runPlan([folderWith(SMALL_FLEET)], { out }, noPage);
  expect(notes).toContain("No page was made: the fleet is too large for one.\n");
  expect(notes).toContain(
    `Written to ${out}: plan.json, orders.csv, orders.xlsx, orders.ics, packs.csv, set-aside.csv.\n`,
  );
  expect(readdirSync(out).sort()).toEqual(
    ["orders.csv", "orders.ics", "orders.xlsx", "packs.csv", "plan.json", "set-aside.csv"].sort(),
  );
});
it("page refuses such a fleet, writes nothing and says what to give instead", async () => {
  const out = join(folderWith({}), "out");
  const run = runPage([folderWith(SMALL_FLEET)], { out }, noPage);
  await expect(run).rejects.toThrow(InputRefused);
  await expect(run).rejects.toThrow("The fleet is too large for one page: give the sheets of a part of it.");
  expect(readdirSync(join(out, ".."))).toEqual([]);
});
