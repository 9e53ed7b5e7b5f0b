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
  // so that an option can take back what the sheet limits: "at four years, or by forecast?"
  it("goes back to a default that is named by its own word", () => {
    const sheet: [string, string][] = [
      ["pack_max_age_months", "48"],
      ["budget_per_fiscal_year", "9000"],
      ["currency", "CHF"],
      ["min_life_days", "60"],
      ["swap_before_expiry_days", "30"],
    ];
    const { policy, problems } = resolve(
      ...sheet,
      ["pack_max_age_months", "none"],
      ["budget_per_fiscal_year", " None "],
      ["currency", "the catalogue's"],
      ["min_life_days", "as the swap margin"],
    );
    const { packMaxAgeMonths, budgetPerFiscalYear, currency, minLifeDays } = policy;
    expect([packMaxAgeMonths, budgetPerFiscalYear, currency, minLifeDays]).toEqual([null, null, null, 30]);
    expect(problems).toEqual([]);
    const { useLogFrom } = resolve(["use_log_from", "2025-05-01"], ["use_log_from", "none"]).policy;
    expect(useLogFrom).toBeNull();
    // what has another default is not to be done without
    expect(resolve(["horizon_months", "none"]).problems).toHaveLength(1);
  });
  it("passes over blank values", () => {
    expect(resolve(["service_level", " "])).toEqual({ policy: defaultPolicy(TODAY), problems: [] });
  });
  it.each([
    ["horizon_months", "soon", "a whole number from 1 to 360", "36 (months)"],
    ["horizon_months", "2.5", "a whole number from 1 to 360", "36 (months)"],
    ["horizon_months", "0", "a whole number from 1 to 360", "36 (months)"],
    ["horizon_months", "999", "a whole number from 1 to 360", "36 (months)"],
    ["fiscal_year_starts", "13", "a month from 1 to 12, or its name", "1 (month)"],
    ["fiscal_year_starts", "Ap", "a month from 1 to 12, or its name", "1 (month)"],
    ["end_of_life_percent", "0.7", "a number from 5 to 100", "80 (% of rated capacity)"],
    ["service_level", "0", "a number from 0.0001 to 0.9999", "0.95 (share)"],
    ["service_level", "95", "a number from 0.0001 to 0.9999", "0.95 (share)"],
    // three percent, not prices that quadruple
    ["price_rise_per_year", "3", "a number from -0.5 to 0.99", "0.03 (share a year)"],
    ["holding_rate_per_year", "10", "a number from 0 to 0.99", "0.1 (share of price a year)"],
    ["budget_per_fiscal_year", "much", "an amount such as 25000", "25000 (money)"],
    // twelve to some readers, twelve thousand to others
    ["budget_per_fiscal_year", "12.000", "an amount such as 25000", "25000 (money)"],
    ["date_order", "dym", "dmy, mdy or ymd", "dmy (dmy, mdy or ymd)"],
    ["as_of", "2026-02-30", "a date as YYYY-MM-DD, 1990 to 2100,", "2026-11-01 (date)"],
    // slips of the pen: as of another century all has expired, or nothing is known yet
    ["as_of", "2206-11-01", "a date as YYYY-MM-DD, 1990 to 2100,", "2026-11-01 (date)"],
    ["use_log_from", "1026-05-01", "a date as YYYY-MM-DD, 1990 to 2100,", "2025-05-01 (date)"],
  ])("%s = %s is refused: %s", (key, value, expected, example) => {
    const { policy, problems } = resolve([key, value]);
    expect(policy).toEqual(defaultPolicy(TODAY));
    expect(problems[0]?.message).toBe(`"${value}" cannot be used for ${key}: ${expected} was expected.`);
    expect(problems[0]?.fix.split("; the default is ")[0]).toBe(`Write, for example, ${example}`);
  });
  it("takes a day from the first of 1990 to the last of 2100, as sheets do", () => {
    for (const [value, asOf] of [
      ["1990-01-01", 7305],
      ["2100-12-31", 47846],
    ] as const) {
      expect(resolve(["as_of", value]).policy.asOf, value).toBe(asOf);
    }
  });
  it("takes a fiscal year's first month by number or by name", () => {
    for (const value of ["4", "April", "apr"]) {
      expect(resolve(["fiscal_year_starts", value]).policy.fiscalYearStarts, value).toBe(4);
    }
  });
  it("takes a budget with cents, or with the many digits of a sum that was worked out", () => {
    for (const value of ["12000", "12000.50", "8333.3333333"]) {
      expect(resolve(["budget_per_fiscal_year", value]).policy.budgetPerFiscalYear).toBe(value);
    }
  });
  it("takes every key's own default as text, where it has one", () => {
    for (const { key, default: byDefault } of POLICY_KEYS) {
      if (!/^[\d.]+$/.test(byDefault)) continue;
      expect(resolve([key, byDefault])).toEqual({ policy: defaultPolicy(TODAY), problems: [] });
    }
  });
});
