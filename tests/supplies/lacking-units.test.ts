import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { makePlan } from "../../src/plan.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

describe("units that devices lack", () => {
  // By hand: four devices carry two pads each; D3 lists one, D4 none. All that is listed lasts beyond the six months and no use
  // is logged, so no unit falls due and nothing is ordered; three units are lacking, and their findings must say so
  it("are in no order, and their findings say so", () => {
    const datedStock = [..."11223"].map((n) => stock("Pads", "2029-01-31", `D${n}`));
    const devices = ["D1", "D2", "D3", "D4"].map((name) => device(name, { type: "A" }));
    const catalogue = [catalogued("Pads", "pads", { fits: ["A"], perDevice: 2 })];
    const fleet = { ...emptyFleet(), devices, catalogue, datedStock };
    const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 6 };
    const plan = makePlan({ inputs: [], setAside: [], findings: [], refused: [], fleet }, policy);
    expect(plan.orders).toEqual([]);
    const told = plan.findings.map(({ code, fix }) => [code, /: what is lacking is not bought\.$/.test(fix ?? "")]);
    expect(Object.fromEntries(told)).toEqual({ "fewer-than-carried": true, "device-without": true });
  });
});
