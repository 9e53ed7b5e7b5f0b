import { afterEach, describe, expect, it } from "vitest";
import { majorUnits, moneyWords, priceWords, setIsoDates } from "../../web/format.ts";

afterEach(() => setIsoDates(false));

// Minor digits: ISO 4217, list one (from memory). Browsers show some of these currencies without their minor unit.
describe("moneyWords and majorUnits: minor units as the engine counts them", () => {
  it.each([
    ["EUR", 123456, 1234.56, "1234.56 EUR"],
    ["HUF", 123456, 1234.56, "1234.56 HUF"],
    ["PKR", 123456, 1234.56, "1234.56 PKR"],
    ["JPY", 123456, 123456, "123456 JPY"],
    ["KWD", 123456, 123.456, "123.456 KWD"],
    ["house money", 123456, 1234.56, "1,234.56 house money"],
  ])("%s", (currency, minor, major, isoWords) => {
    expect(majorUnits(minor, currency)).toBe(major);
    setIsoDates(true);
    expect(moneyWords(minor, currency)).toBe(isoWords);
  });

  it("shows the minor unit also where the reader's locale leaves it out", () => {
    expect(moneyWords(123456, "HUF")).toMatch(/1\D?234\D56/);
    expect(moneyWords(123456, "HUF", 0)).toMatch(/1\D?235(?!\D?\d)/);
  });

  it("shows an amount in no currency as a bare number, and none as a dash", () => {
    expect(moneyWords(123456, "XXX")).toBe("1,234.56");
    expect(moneyWords(0, "XXX")).toBe("–");
  });
});

describe("priceWords: a price with every digit that it has", () => {
  it.each([
    ["38.50", "EUR", "38.50 EUR"],
    // 1249.50 after two rises of 3 %
    ["1325.59455", "EUR", "1325.59455 EUR"],
    // a strip of paper for less than a cent
    ["0.0034", "EUR", "0.0034 EUR"],
    ["1200", "JPY", "1200 JPY"],
  ])("%s %s", (price, currency, isoWords) => {
    setIsoDates(true);
    expect(priceWords(price, currency)).toBe(isoWords);
    setIsoDates(false);
    expect(priceWords(price, currency)).not.toContain(currency);
    expect(priceWords(price, currency).replace(/[^\d.]/g, "")).toBe(price);
  });
});
