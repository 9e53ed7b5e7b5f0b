import { describe, expect, it } from "vitest";
import { defaultPolicy, type Policy } from "../../src/fleet/policy.ts";
import { rememberStages } from "../../src/fleet/policy-reads.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { makePlan } from "../../src/plan.ts";
import { catalogued, day, device, ordered, pack, stock } from "../fleet/make-rows.ts";

// By hand: four devices carry two pads each; D3 lists one, D4 none. All that is listed lasts beyond the six months and no use
// is logged, so no unit falls due; three units are lacking, in two devices
const devices = ["D1", "D2", "D3", "D4"].map((name) => device(name, { type: "A" }));
const pads = catalogued("Pads", "pads", { fits: ["A"], perDevice: 2, arrivesWithMonths: 24, leadDays: 20 });
const padsAt = (places: string, item = "Pads") => [...places].map((n) => stock(item, "2029-01-31", `D${n}`));
const fleet: Fleet = { ...emptyFleet(), devices, catalogue: [pads], datedStock: padsAt("11223") };
const leave: Policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 6 };
const buy: Policy = { ...leave, buyLacking: "yes" };
const planOf = (told: Fleet, policy: Policy, again?: Parameters<typeof makePlan>[2]) =>
  makePlan({ inputs: [], setAside: [], findings: [], refused: [], fleet: told }, policy, again);
const needsOf = ({ demand }: ReturnType<typeof planOf>) => demand.map(({ item, mean }) => [item, mean]);

describe("units that devices lack", () => {
  it("are in no order, and the plan says so", () => {
    const plan = planOf(fleet, leave);
    expect(plan.orders).toEqual([]);
    expect(plan.findings.map(({ code }) => code).sort()).toEqual(["device-without", "fewer-than-carried"]);
    expect(plan.short[0]!.withoutBuying.expected).toBe(0);
    expect(plan.cautions).toContain(
      "By the sheets, devices in service lack 3 units of Pads: neither bought nor counted as short. " +
        "Add what they hold to the sheets, or set buy_lacking to yes.",
    );
  });

  it("are needs of today where the planner has them bought, and leave their devices short until they come", () => {
    const plan = planOf(fleet, buy);
    expect(needsOf(plan)).toEqual([["Pads", [3, 0, 0, 0, 0, 0]]]);
    expect(plan.demand[0]!.causes.growth).toEqual([3, 0, 0, 0, 0, 0]);
    expect(plan.orders.map(({ item, quantity, orderBy, late }) => [item, quantity, orderBy, late])).toEqual([
      ["Pads", 3, "2026-11-01", true],
    ]);
    expect(plan.short.map(({ withoutBuying }) => withoutBuying.expected)).toEqual([2, 2, 2, 2, 2, 2]);
    expect(plan.cautions.join(" ")).not.toContain("lack");
    expect(plan.findings.map(({ code }) => code).sort()).toEqual(["device-without", "fewer-than-carried"]);
  });

  it("are served by the shelf and by what is on its way", () => {
    const arrives = { arrives: day("2026-11-10"), expiry: day("2029-01-31") };
    const shelf = [stock("Pads", "2029-01-31", "Store", { quantity: 1 })];
    const coming = { ...fleet, datedStock: [...fleet.datedStock, ...shelf], onOrder: [ordered("Pads", 2, arrives)] };
    expect(planOf(coming, buy).orders).toEqual([]);
    const fewer = { ...coming, onOrder: [ordered("Pads", 1, arrives)] };
    expect(planOf(fewer, buy).orders.map(({ quantity }) => quantity)).toEqual([1]);
  });

  // By hand: D1's pack came out and none came in its place, D2 has its pack, D3 leaves tomorrow; the packs are due at ten
  // years, far beyond the plan, and nothing is known of how they fade or fail
  it("are packs, too, of devices of which all have come out, for as long as the device stays", () => {
    const packs = [
      pack("S1", { item: "Pack", device: "D1", retired: day("2026-09-01") }),
      pack("S2", { item: "Pack", device: "D2", inService: day("2026-01-01") }),
      pack("S3", { item: "Pack", device: "D3", retired: day("2026-09-01") }),
    ];
    const some = ["D1", "D2"].map((name) => device(name, { type: "A" }));
    const leaving = device("D3", { type: "A", retired: day("2026-11-02") });
    const catalogue = [catalogued("Pack", "pack", { fits: ["A"], perDevice: 1 })];
    const told = { ...emptyFleet(), devices: [...some, leaving], catalogue, packs };
    const without = planOf(told, leave).demand[0]!.mean[0]!;
    const plan = planOf(told, buy);
    expect(plan.demand[0]!.mean[0]! - without).toBeCloseTo(2, 1);
    expect(plan.demand[0]!.causes.growth).toEqual([2, 0, 0, 0, 0, 0]);
  });

  // By hand: of two items that serve as well, two devices hold four of the one, two four of the other, and D3 three of both
  it("are counted once where another item serves as well: of the one of which there is more, else the first by name", () => {
    const five = ["D1", "D2", "D3", "D4", "D5"].map((name) => device(name, { type: "A" }));
    const other = catalogued("Other pads", "pads", { alternatives: ["Pads"], fits: ["A"], perDevice: 4 });
    const told = { ...fleet, devices: five, catalogue: [{ ...pads, perDevice: 4 }, other] };
    const needs = (ofPads: string, ofOther: string) => {
      const datedStock = [...padsAt(`11114444${ofPads}`), ...padsAt(`22225555${ofOther}`, "Other pads")];
      return needsOf(planOf({ ...told, datedStock }, buy)).map(([item, mean]) => [item, mean![0]]);
    };
    const of = (otherPads: number, firstPads: number) => [
      ["Other pads", otherPads],
      ["Pads", firstPads],
    ];
    expect(needs("33", "3")).toEqual(of(0, 1));
    expect(needs("3", "33")).toEqual(of(1, 0));
    expect(needs("3", "3")).toEqual(of(2, 0));
    expect(needs("33", "33")).toEqual(of(0, 0));
  });

  it("are told anew when the planner thinks otherwise of them", () => {
    const again = rememberStages();
    expect([leave, buy, leave].map((policy) => planOf(fleet, policy, again).orders.length)).toEqual([0, 1, 0]);
  });
});
