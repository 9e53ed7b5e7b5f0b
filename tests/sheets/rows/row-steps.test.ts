import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../../src/calendar/day.ts";
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

// B3 itself was retired after it had gone in; of E-4 no other battery is named, and the dates stand as they are
it("a battery is not retired on the day on which the one before it came out", () => {
  const { fleet } = read(`AED,Battery S/N,Installed,Old battery S/N,Removed on
E-1,B1,2025-01-02,A1,2025-01-01
E-2,B2,2025-01-01,A2,2025-01-01
E-3,B3,2024-01-01,A3,2025-01-01
E-4,B4,2025-01-01,,2025-01-01
`);
  expect(fleet.packs.map(({ serial, retired }) => [serial, retired && isoFromDay(retired)])).toEqual([
    ["B1", null],
    ["B2", null],
    ["B3", "2025-01-01"],
    ["B4", "2025-01-01"],
  ]);
});
