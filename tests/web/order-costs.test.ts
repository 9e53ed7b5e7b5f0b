import { afterEach, describe, expect, it } from "vitest";
import type { Plan } from "../../src/out/plan-schema.ts";
import { setIsoDates } from "../../web/format.ts";
import { orderCosts } from "../../web/order-costs.ts";
import { aPlan } from "../out/a-plan.ts";

afterEach(() => setIsoDates(false));

const [first] = aPlan().orders;
const lines = (...of: Partial<Plan["orders"][number]>[]) => of.map((one) => ({ ...first!, ...one }));
const costs = (...of: Partial<Plan["orders"][number]>[]) => {
  setIsoDates(true);
  return orderCosts(lines(...of));
};

describe("orderCosts: what lines cost together", () => {
  it("adds fees, and keeps currencies apart, by their codes", () => {
    expect(
      costs(
        { currency: "USD", lineCost: 24_000, feeShare: 0 },
        { currency: "EUR", lineCost: 10_000, feeShare: 150 },
        { currency: "EUR", lineCost: 9_000, feeShare: 350 },
      ),
    ).toBe("195 EUR and 240 USD");
  });

  it("says nothing of lines without a price, in whatever currency they would be", () => {
    expect(costs({ currency: "XXX", lineCost: 0, feeShare: 0 }, { currency: "EUR", lineCost: 0, feeShare: 0 })).toBe(
      "",
    );
    expect(costs()).toBe("");
  });

  it("tells a sum in no currency as a number", () => {
    expect(costs({ currency: "XXX", lineCost: 10_000, feeShare: 0 })).toBe("100");
  });
});
