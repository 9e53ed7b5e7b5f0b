import { expect, it } from "vitest";
import { isoFromDay } from "../../../src/calendar/day.ts";
import { read } from "../sheet-file.ts";

it("gives each date of a cell its lot, however both are parted, and the rest of their count to the first to expire", () => {
  const { fleet, inputs } = read(`item,place,expiry,lot,quantity
pads,Store,2027-05-31 / 2028-05-31 / 2026-12-31,A1 / A2 / A3,10
pads,Store,"2027-05-31, 2028-05-31","B1, B2",5
pads,Store,2027-05-31 & 2028-05-31,C1 and C2,2
`);
  expect(
    fleet.datedStock.map(({ lot, expiry, quantity, source }) => [source.line, lot, isoFromDay(expiry), quantity]),
  ).toEqual([
    [2, "A1", "2027-05-31", 1],
    [2, "A2", "2028-05-31", 1],
    [2, "A3", "2026-12-31", 8],
    [3, "B1", "2027-05-31", 4],
    [3, "B2", "2028-05-31", 1],
    [4, "C1", "2027-05-31", 1],
    [4, "C2", "2028-05-31", 1],
  ]);
  expect(inputs.map(({ rows, used }) => [rows, used])).toEqual([[3, 3]]);
});
