import { describe, expect, it } from "vitest";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { aheadText } from "../../src/out/ahead.ts";
import type { Plan } from "../../src/out/plan-schema.ts";
import { neededTable } from "../../src/out/summary-tables.ts";
import { makePlan } from "../../src/plan.ts";
import { catalogued, day, device, pack, stock } from "../fleet/make-rows.ts";
import { policyWith } from "../orders/made-up.ts";

/** Three packs that are long due, each spelled in its own way, and a unit that expires in spring. */
function planOf(...[cell, ...others]: [ReturnType<typeof catalogued>, ...ReturnType<typeof catalogued>[]]): Plan {
  const fleet = {
    ...emptyFleet(),
    devices: ["D1", "D2", "D3"].map((name) => device(name)),
    packs: ["CELL-A", "cell-a", "Cell-a"].map((item, at) =>
      pack(`P${at}`, { item, device: `D${at + 1}`, inService: day("2019-01-01") }),
    ),
    catalogue: [cell, ...others],
    datedStock: [stock("Gel", "2027-03-31", "D1")],
  };
  const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
  return makePlan(reading, policyWith({ asOf: day("2026-11-01"), horizonMonths: 7 }));
}

const lived = { serviceMonths: 48 };

// By hand: 48 months from January 2019 on are over, so three packs are needed now, and of gel one unit by mid March
describe("what lies ahead", () => {
  it.each([
    ["spelled in several ways", planOf(catalogued("Cell-A", "pack", lived))],
    [
      "bought under another name",
      planOf(catalogued("Cell-A", "pack", { ...lived, replacedBy: "New cell" }), catalogued("New cell", "pack", lived)),
    ],
  ])("counts packs as packs, though %s", (_, plan) => {
    expect(aheadText(plan)).toMatch(/^By the end of 2027-05 you will likely need 3 packs and 1 unit of supplies\. /);
    const items = neededTable(plan, 80).split("\n").slice(2);
    expect(items.map((row) => row.split(/ {2}/)[0])).toEqual([plan.orders[0]!.item, "Gel"]);
  });
});
