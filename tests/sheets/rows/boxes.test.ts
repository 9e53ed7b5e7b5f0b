import { expect, it } from "vitest";
import { read } from "../sheet-file.ts";

it("counts the whole units of boxes that are not full: 1.5 boxes of 5 hold 7, and a third of one of 3 holds 1", () => {
  const { fleet } = read({
    "catalogue.csv": "item,kind,units_per_box\ngel,gel,5\npads,pads,3\n",
    "stock.csv":
      "Item,Place,Expiry,Lot,Boxes\ngel,Store,2027-05-31,L1,1.5\ngel,Store,2027-05-31,L2,0.1\npads,Store,2027-05-31,L3,0.333\n",
    "more.csv": "Item,Place,Expiry,Lot,Boxes,Units per box\ngel,Store,2027-05-31,L4,0.5,25\n",
  });
  expect(fleet.datedStock.map(({ lot, quantity }) => [lot, quantity])).toEqual([
    ["L4", 12],
    ["L1", 7],
    ["L2", 0],
    ["L3", 1],
  ]);
});
