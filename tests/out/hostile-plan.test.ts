import { describe, expect, it } from "vitest";
import { comparePlans } from "../../src/out/compare.ts";
import { compareText } from "../../src/out/compare-text.ts";
import { type Plan, planSchema } from "../../src/out/plan-schema.ts";
import { readPlan } from "../../src/out/read-plan.ts";
import { aPlan } from "./a-plan.ts";

const KEYS = Object.keys(planSchema.shape);

describe("readPlan: a plan that someone made up", () => {
  it("refuses wrong types at every key, and names the key", () => {
    for (const key of KEYS.filter((one) => one !== "format")) {
      for (const wrong of [null, 7, true, [[]], { length: [1] }, "\u0000"]) {
        const read = readPlan(JSON.stringify({ ...aPlan(), [key]: wrong }));
        // engine alone may be any text
        if (read && "plan" in read) expect([key, typeof wrong]).toEqual(["engine", "string"]);
        else expect(read?.problem).toContain(`does not hold to its format at ${key}`);
      }
    }
  });

  it("reads a plan to which an editor has added a byte order mark", () => {
    expect(readPlan(`\ufeff${JSON.stringify(aPlan())}`)).toEqual({ plan: aPlan() });
  });

  it("reads a plan that was saved before order lines named the trade item number", () => {
    const plan = aPlan();
    const before = { ...plan, orders: plan.orders.map(({ gtin, ...line }) => line) };
    const unnamed = { ...plan, orders: plan.orders.map((line) => ({ ...line, gtin: null })) };
    expect(plan.orders.length).toBeGreaterThan(0);
    expect(readPlan(JSON.stringify(before))).toEqual({ plan: unnamed });
  });

  it("lets no key reach the prototype of all objects", () => {
    const own = '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}';
    const read = readPlan(`{${own},"policy":{${own}},${JSON.stringify(aPlan()).slice(1)}`);
    expect(read).not.toBe(null);
    expect(({} as { polluted?: number }).polluted).toBe(undefined);
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it("refuses nesting without end and text that is no plan", () => {
    const deep = `${"[".repeat(200_000)}${"]".repeat(200_000)}`;
    expect(readPlan(`{"format":"wanecast.plan/1","packs":${deep}}`)).toHaveProperty("problem");
    for (const text of [deep, "", "null", "7", '"wanecast.plan/1"', '{"format":["wanecast.plan/1"]}']) {
      expect(readPlan(text)).toBe(null);
    }
  });
});

describe("compareText: a plan that someone made up", () => {
  const named = (label: string, plan: Plan) => ({ label, plan });

  it("hands no control character to the terminal", () => {
    const sign = "\u001b]0;title\u0007\u001b[2J";
    const text = JSON.stringify(aPlan()).replaceAll(/"(serial|item|supplier|device|site)":"[^"]*"/g, (_, key) =>
      JSON.stringify({ [key]: sign }).slice(1, -1),
    );
    const read = readPlan(text);
    if (!read || !("plan" in read)) throw new Error("the plan was meant to be taken");
    const told = compareText(comparePlans(named(sign, read.plan), named("b", aPlan())), { width: 100 });
    expect(told).toContain("title");
    expect(told).not.toMatch(/[^\P{Cc}\n]/u);
  });

  it("works through months that cannot be and items named like parts of every object", () => {
    const strange = aPlan({ horizon: { from: "0000-00", to: "9999-99" } });
    for (const demand of strange.demand) Object.assign(demand, { item: "__proto__", mean: [], p50: [] });
    for (const order of strange.orders) Object.assign(order, { item: "constructor" });
    expect(comparePlans(named("a", strange), named("b", aPlan())).format).toBe("wanecast.compare/1");
  });
});
