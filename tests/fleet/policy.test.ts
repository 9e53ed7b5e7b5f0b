import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/calendar/day.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { POLICY_KEYS } from "../../src/fleet/policy-keys.ts";
import { resolvePolicy } from "../../src/fleet/resolve-policy.ts";

const TODAY = dayFromIso("2026-11-01")!;
const resolve = (...pairs: [string, string][]) =>
  resolvePolicy(
    pairs.map(([key, value]) => ({ key, value })),
    TODAY,
  );

describe("resolvePolicy", () => {
  it("gives the defaults where nothing is chosen, as-of being today", () => {
    expect(resolve()).toEqual({ policy: defaultPolicy(TODAY), problems: [] });
  });
  it("lets a later choice win", () => {
    expect(resolve(["horizon_months", "24"], ["Horizon_Months", " 12 "]).policy.horizonMonths).toBe(12);
  });
  it("takes the swap margin as the least life of a unit, unless one is given", () => {
    expect(resolve(["swap_before_expiry_days", "30"]).policy.minLifeDays).toBe(30);
    expect(resolve(["swap_before_expiry_days", "30"], ["min_life_days", "60"]).policy.minLifeDays).toBe(60);
  });
  it("passes over blank values", () => {
    expect(resolve(["service_level", " "])).toEqual({ policy: defaultPolicy(TODAY), problems: [] });
  });
  it.each([
    ["horizon_months", "soon", "a number was expected"],
    ["horizon_months", "2.5", "a whole number was expected"],
    ["horizon_months", "0", "1 or more was expected"],
    ["horizon_months", "999", "360 or less was expected"],
    ["service_level", "0", "more than 0 was expected"],
    ["service_level", "1", "less than 1 was expected"],
    ["budget_per_fiscal_year", "much", "an amount such as 25000 was expected"],
    ["date_order", "dym", "dmy, mdy or ymd was expected"],
    ["as_of", "2026-02-30", "a date as YYYY-MM-DD was expected"],
  ])("%s = %s is refused: %s", (key, value, why) => {
    const { policy, problems } = resolve([key, value]);
    expect(policy).toEqual(defaultPolicy(TODAY));
    expect(problems[0]?.message).toBe(`"${value}" cannot be used for ${key}: ${why}.`);
    expect(problems[0]?.fix).toMatch(/; the default is .+\.$/);
  });
  it("takes every key's own default as text, where it has one", () => {
    for (const { key, default: byDefault } of POLICY_KEYS) {
      if (!/^[\d.]+$/.test(byDefault)) continue;
      expect(resolve([key, byDefault])).toEqual({ policy: defaultPolicy(TODAY), problems: [] });
    }
  });
});
