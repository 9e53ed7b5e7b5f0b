import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimalMoney, groupedMoney, namedMoney } from "../../src/fleet/money-text.ts";

describe("money as text", () => {
  // Minor units: ISO 4217 (EUR 2, JPY 0, KWD 3), from memory
  it.each([
    [1_234_567, "EUR", "12345.67", "12,345.67"],
    [5, "EUR", "0.05", "0.05"],
    [0, "EUR", "0.00", "0.00"],
    [1_234_567, "JPY", "1234567", "1,234,567"],
    [1_234_567, "KWD", "1234.567", "1,234.567"],
    [-99, "EUR", "-0.99", "-0.99"],
    [-123_456_789, "EUR", "-1234567.89", "-1,234,567.89"],
  ])("%d minor units of %s", (minor, currency, decimal, grouped) => {
    expect(decimalMoney(minor, currency)).toBe(decimal);
    expect(groupedMoney(minor, currency)).toBe(grouped);
  });

  // XXX: no currency, ISO 4217
  it("namedMoney: names the currency, unless there is none", () => {
    expect(namedMoney(1_234_567, "EUR")).toBe("EUR 12,345.67");
    expect(namedMoney(1_234_567, "XXX")).toBe("12,345.67");
  });

  it("decimalMoney: loses no minor unit", () => {
    fc.assert(
      fc.property(fc.integer(), (minor) => {
        expect(BigInt(decimalMoney(minor, "EUR").replace(".", ""))).toBe(BigInt(minor));
      }),
      { seed: 3 },
    );
  });
});
