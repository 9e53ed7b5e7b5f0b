import { expect, it } from "vitest";
import { read } from "../sheet-file.ts";

it("adds what lies loose to the boxes of ten beside it, also where there is no box", () => {
  const lines = ["2,3", ",3", "0,3", "1,3 pcs", "2,"];
  const { fleet } = read({
    "catalogue.csv": "item,kind,units_per_box\ngel,gel,10\n",
    "stock.csv": `Item,Place,Expiry,Lot,Boxes,Loose\n${lines.map((line, at) => `gel,Store,2027-05-31,L${at},${line}\n`).join("")}`,
  });
  expect(fleet.datedStock.map(({ quantity }) => quantity)).toEqual([23, 3, 3, 13, 20]);
});
