import { describe, expect, it } from "vitest";
import { read } from "../sheet-file.ts";

/** The lots that stay of a list of stock, as of 2026-11-01. */
const left = (header: string, days: Record<string, string>) =>
  read(
    `item,expiry,lot,${header}\n${Object.entries(days)
      .map(([lot, day]) => `pads,2027-12-31,${lot},${day}\n`)
      .join("")}`,
  ).fleet.datedStock.map(({ lot }) => lot);

it("supplies whose status says that they were used are gone, and batteries that are used are not", () => {
  const gone = ["Used", "Issued", "consumed", "Utilisé", "verbraucht", "Out of stock"];
  const there = ["In use", "Unused", "Not used", "OK", "new", "in Gebrauch"];
  const days = Object.fromEntries([...gone, ...there].map((status) => [status, status]));
  expect(left("Status", days)).toEqual(there);
  expect(read("serial,device,status\nB1,AED-1,Used\nB2,AED-2,Issued\n").fleet.packs).toHaveLength(2);
});

describe("dated units with a day on which they go", () => {
  it("are gone from that day on, and not before it", () => {
    const days = { L1: "2026-10-31", L2: "2026-11-01", L3: "2027-05-31", L4: "" };
    for (const header of ["Discard after", "Disposed on", "Date used"])
      expect(left(header, days)).toEqual(["L3", "L4"]);
  });

  it("are gone where the day can be read as one that has passed: 6 December or 12 June 2026", () => {
    expect(left("Disposed on", { L1: "06/12/2026", L2: "06/12/2027" })).toEqual(["L2"]);
  });
});

it("a price that says so is a box's, and any other as its column says", () => {
  const prices = ["12.50/box", "12.50 EUR per box", "€12.50 / carton", "12.50 each", "12.50"];
  const rows = prices.map((price, at) => `item ${at},pads,${price},10\n`).join("");
  expect(
    read(`item,kind,price,units_per_box\n${rows}`).fleet.catalogue.map(({ price, pricePer }) => [price, pricePer]),
  ).toEqual([
    ["12.50", "box"],
    ["12.50", "box"],
    ["12.50", "box"],
    ["12.50", null],
    ["12.50", null],
  ]);
});
