import { expect, it } from "vitest";
import { currencyCode, minorDigits } from "../../src/fleet/currency.ts";

it.each([
  [" eur ", "EUR"],
  ["€", "EUR"],
  ["Euro", "EUR"],
  ["£", "GBP"],
  ["US$", "USD"],
  // of many countries: as it stands
  ["kr", "KR"],
  ["$", "$"],
])("tells the currency %j by its code, %s", (name, code) => {
  expect(currencyCode(name)).toBe(code);
});

// Source: ISO 4217, list one: the yen has no minor unit, the Kuwaiti dinar has 1,000 fils
it.each([
  ["JPY", 0],
  ["KWD", 3],
  ["EUR", 2],
  ["XXX", 2],
])("counts %s in minor units of %i digits", (code, digits) => {
  expect(minorDigits(code)).toBe(digits);
});
