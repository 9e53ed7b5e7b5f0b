import { expect, it } from "vitest";
import { monthFromText } from "../../src/calendar/month.ts";
import { itemBook } from "../../src/fleet/item-book.ts";
import { type CatalogueRow, emptyFleet } from "../../src/fleet/rows.ts";
import { describeCrowd } from "../../src/supplies/describe-crowd.ts";
import { catalogued } from "../fleet/make-rows.ts";

const month = monthFromText("2027-08")!;
const crowd = {
  item: "Pads",
  month,
  units: 10,
  evenShare: 1.5,
  pValue: 0.001,
  span: { from: month, to: month },
  lots: ["W1"],
  places: 10,
};
const says = (rows: CatalogueRow[], facts: { tooMany: number; roomBefore: number }) => {
  const item = itemBook({ ...emptyFleet(), catalogue: rows }, ["Pads"]).find("Pads");
  return describeCrowd(crowd, { item, spanChance: 1, used: 0, moved: 0, ...facts });
};
const sold = (supplier: string, price: string, currency = "EUR") =>
  catalogued("Pads", "pads", { supplier, price, currency });
const rows = [sold("Ostlane", "41.20"), sold("Quillmark", "38.50"), sold("Zell", "9.00", "SEK")];

// by hand: ten units at the lowest of the prices in one currency, whichever supplier comes first by name
it("prices a crowd at the lowest price of a single unit", () => {
  expect(says(rows, { tooMany: 6, roomBefore: 9 })).toContain(
    "At the price of a single unit, replacing them costs 385.00 EUR.",
  );
});

// by hand: ten at 0.1255 are 1.255, half up to whole cents; ten at 1,234.5 yen are 12,345
it("prices a crowd in whole minor units", () => {
  const facts = { tooMany: 6, roomBefore: 9 };
  expect(says([sold("Ostlane", "0.1255")], facts)).toContain("replacing them costs 1.26 EUR.");
  expect(says([sold("Ostlane", "1234.5", "JPY")], facts)).toContain("replacing them costs 12,345 JPY.");
});

it("prices nothing where no price of a single unit is known, or no currency", () => {
  const facts = { tooMany: 6, roomBefore: 9 };
  expect(says([], facts)).not.toContain("price");
  expect(says([catalogued("Pads", "pads", { price: "9.00" })], facts)).not.toContain("price");
  expect(says([catalogued("Pads", "pads", { price: "9.00", currency: "EUR", pricePer: "box" })], facts)).not.toContain(
    "price",
  );
});

it("counts the units too many in words that agree", () => {
  expect(says(rows, { tooMany: 1, roomBefore: 9 })).toContain("swap the 1 unit too many one to three months early");
  expect(says(rows, { tooMany: 6, roomBefore: 9 })).toContain("swap the 6 units too many");
  expect(says(rows, { tooMany: 6, roomBefore: 2 })).toContain("swap 2 of the 6 units too many");
});
