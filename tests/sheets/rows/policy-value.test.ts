import { describe, expect, it } from "vitest";
import { policyChoice } from "../../../src/sheets/rows/policy-value.ts";
import { read } from "../sheet-file.ts";

const valueIn = (key: string, text: string) => policyChoice(key, text).value;

describe("policyChoice", () => {
  it("reads days and months in the unit that stands beside them: two weeks are 14 days, four years 48 months", () => {
    expect(policyChoice("Swap before expiry days", " 2 weeks ")).toEqual({
      key: "swap_before_expiry_days",
      value: "14",
    });
    expect(valueIn("pack_max_age_months", "4 years")).toBe("48");
    expect(valueIn("pack_max_age_months", "1.5 years")).toBe("18");
    expect(valueIn("horizon_months", "36 months")).toBe("36");
    expect(valueIn("order_before_need_days", "14")).toBe("14");
    expect(valueIn("swap_before_expiry_days", "0 days")).toBe("0");
  });

  it("leaves as they stand what is no whole number of them and what is no such unit, to be refused", () => {
    for (const [key, text] of [
      ["pack_max_age_months", "6 weeks"],
      ["order_before_need_days", "1 month"],
      ["horizon_months", "36 units"],
      ["min_life_days", "as the swap margin"],
    ])
      expect(valueIn(key!, text!)).toBe(text);
  });

  // 25 thousand, million or milliard are no 25; a currency beside an amount says nothing of its size
  it("leaves an amount as it stands that a word multiplies, and takes one beside its currency", () => {
    const key = "budget_per_fiscal_year";
    for (const text of ["25k", "25 k€", "1.5 Mio", "EUR 25 tsd", "25 TEUR", "2 million", "3 mln", "25000 a month"])
      expect(valueIn(key, text)).toBe(text);
    for (const text of ["25000", "€ 25,000", "25 000 SEK", "25000 Euro", "US$ 25000", "25'000 kr"])
      expect(valueIn(key, text)).toBe("25000");
  });

  it("reads shares, amounts and days as people write them", () => {
    expect(valueIn("Service level", "95 %")).toBe("0.95");
    expect(valueIn("price_rise_per_year", "2,5 %")).toBe("0.025");
    expect(valueIn("spares_percent", "10 %")).toBe("10");
    expect(valueIn("Budget per fiscal year", "12,000 EUR")).toBe("12000");
    expect(valueIn("As of", "1 Nov 2026")).toBe("2026-11-01");
    for (const [text, value] of [
      ["Yes", "yes"],
      ["TRUE", "yes"],
      ["Nein", "no"],
      ["perhaps", "perhaps"],
    ])
      expect(valueIn("Buy lacking", text!)).toBe(value);
  });
});

describe("policy rows of one key in other words", () => {
  it("contradict each other like any, and none counts; those that say the same are one", () => {
    const { fleet, setAside } = read(`key,value
Service level,95 %
service_level,0.9
Horizon months,2 years
horizon_months,24
`);
    expect(fleet.policy.map(({ key, value }) => [key, value])).toEqual([["horizon_months", "24"]]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([
      [2, "clash"],
      [3, "clash"],
      [5, "repeat"],
    ]);
  });
});
