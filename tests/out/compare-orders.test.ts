import { describe, expect, it } from "vitest";
import { compareOrders } from "../../src/out/compare-orders.ts";
import type { Plan } from "../../src/out/plan-schema.ts";
import { aPlan } from "./a-plan.ts";

type Line = Plan["orders"][number];

const some = aPlan().orders[0]!;
const line = (id: string, from: string, to: string, more: Partial<Line> = {}): Line => ({
  ...some,
  id,
  orderBy: `${from}-01`,
  covers: { from, to },
  ...more,
});
const changed = (a: Line[], b: Line[]) =>
  compareOrders(aPlan({ orders: a }), aPlan({ orders: b }), { from: "2026-11", to: "2029-10" });

describe("compareOrders", () => {
  // By hand: March to June became February to May, one order a month earlier; July to October and November have no like
  it("takes a line whose first month moved for the same order, and no other", () => {
    const a = [line("x", "2027-03", "2027-06"), line("y", "2027-07", "2027-10")];
    const b = [line("w", "2027-02", "2027-05"), line("z", "2027-11", "2028-01")];
    expect(changed(a, b).map(({ id, change, orderBy }) => [id, change, orderBy.a, orderBy.b])).toEqual([
      ["w", "changed", "2027-03-01", "2027-02-01"],
      ["y", "gone", "2027-07-01", null],
      ["z", "new", null, "2027-11-01"],
    ]);
  });

  // By hand: one order for eight months became two, of which the one under its id is it
  it("gives each line one like at the most, that under its own id first", () => {
    const whole = line("x", "2027-03", "2027-10", { quantity: 8 });
    const halves = [line("w", "2027-02", "2027-02"), line("x", "2027-03", "2027-06"), line("y", "2027-07", "2027-10")];
    const of = (a: Line[], b: Line[]) => changed(a, b).map(({ id, change }) => [id, change]);
    expect(of([whole], halves)).toEqual([
      ["w", "new"],
      ["x", "changed"],
      ["y", "new"],
    ]);
    // without one under its id the earliest is it
    expect(of([whole], [halves[2]!, line("v", "2027-02", "2027-06")])).toEqual([
      ["v", "changed"],
      ["y", "new"],
    ]);
  });

  it("takes neither another item's, nor another supplier's, nor one in another currency for the same order", () => {
    const a = [line("x", "2027-03", "2027-06")];
    for (const other of [{ item: "Another" }, { supplier: "Another" }, { currency: "USD" }]) {
      const found = changed(a, [line("w", "2027-02", "2027-05", other)]);
      expect(found.map(({ change }) => change)).toEqual(["new", "gone"]);
    }
  });
});
