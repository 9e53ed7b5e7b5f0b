import { expect, it } from "vitest";
import { decimalMarkProof } from "../../../src/sheets/values/number-text.ts";
import { read } from "../sheet-file.ts";

// By hand: of "1,250" nobody can say whether it is a thousand; "1,25", "0,250" and "1.250,5" can only have a decimal comma
it.each([
  ["1,250", null],
  ["1,250 EUR", null],
  ["EUR 1,250", null],
  ["1,250 €", null],
  ["1.250 EUR", null],
  ["980 EUR", null],
  ["1,25 EUR", ","],
  ["0,250 kg", ","],
  ["1.250,50 EUR", ","],
  ["1,250.50 EUR", "."],
  ["1,250,000 EUR", "."],
  ["12.5 EUR", "."],
])("%s proves the decimal mark %s, whatever word stands beside it", (text, mark) => {
  expect(decimalMarkProof(text)).toBe(mark);
});

it("reads thousands with a currency or a unit behind them as thousands", () => {
  const { fleet } = read({
    "catalogue.csv": 'item,kind,price\npads,pads,"1,250 EUR"\n',
    "stock.csv": 'item,expiry,lot,quantity\npads,2027-05-31,A,"1,000 pcs"\n',
  });
  expect(fleet.catalogue[0]).toMatchObject({ price: "1250", currency: "EUR" });
  expect(fleet.datedStock[0]!.quantity).toBe(1000);
});
