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

// no price has three decimals, and no column of whole ones says what the point is for
it("refuses a price of which its column does not tell whether it is thousands", () => {
  const { fleet, findings } = read("item,kind,price\nA,pack,1.250\nB,pack,980\n");
  expect(fleet.catalogue.map(({ price }) => price)).toEqual([null, "980"]);
  expect(findings.map(({ code, line, column }) => [code, line, column])).toEqual([["number-unreadable", 2, 3]]);
  expect(findings[0]!.message).toContain('"1.250" in column "price" (C) may be 1250 or 1.25');
});

it.each([
  ["item,kind,price\nA,pack,1.250\nB,pack,42.50\n", "1.25"],
  ['item,kind,price\nA,pack,1.250\nB,pack,"42,50"\n', "1250"],
  ["item;kind;price\nA;pack;1.250\nB;pack;980\n", "1250"],
  ['item,kind,price\nA,pack,"1,250"\nB,pack,980\n', "1250"],
  ["item,kind,price\nA,pack,1.2k\nB,pack,980\n", "1200"],
  ["item,kind,price\nA,pack,€1.2k\nB,pack,980 kr\n", "1200"],
  // Source: ISO 4217, three decimals for KWD, two for EUR
  ["item,kind,price,currency\nA,pack,1.250,KWD\nB,pack,980,EUR\n", "1.25"],
  ["item,kind,price,currency\nA,pack,1.250,KWD\nB,pack,2.500,EUR\n", null],
])("reads the first price of %j as %s", (text, price) => {
  expect(read(text).fleet.catalogue[0]!.price).toBe(price);
});

it("reads digits of full width", () => {
  const { fleet } = read("item,expiry,lot,quantity\npads,２０２７-０５-３１,A,１２\n");
  expect(fleet.datedStock[0]).toMatchObject({ quantity: 12 });
});
