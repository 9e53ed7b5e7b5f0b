import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/index.ts";
import { read } from "./sheet-file.ts";

const stock = (text: string) => read({ "stock.csv": text }).fleet.datedStock.map(({ quantity }) => quantity);

describe("units counted in boxes under a heading of one word", () => {
  it.each([
    "Item,Boxes,Per box,Expiry\nAdult pads,3,10,2027-05\n",
    "Item,Units per box,Boxes,Expiry\nAdult pads,10,3,2027-05\n",
    "Item;Kartons;Stück je Karton;MHD\nElektroden;3;10;05/2027\n",
    "Article;Cartons;Par carton;Péremption\nÉlectrodes;3;10;05/2027\n",
  ])("are as many as their boxes hold: %j", (text) => {
    expect(stock(text)).toEqual([30]);
  });

  it("stand beside loose ones, which lie in no box", () => {
    expect(
      stock("Item,Boxes,Loose,Units per box,Expiry\nPads,3,4,10,2027-05\nGel,0,5,12,2027-05\nPaper,2,,12,2027-05\n"),
    ).toEqual([34, 5, 24]);
    const { fleet } = read({
      "stock.csv": "Artikel;Kartons;Einzeln;MHD\nElektroden;3;4;05/2027\n",
      "catalogue.csv": "item,kind,units_per_box\nElektroden,pads,10\n",
    });
    expect(fleet.datedStock).toMatchObject([{ quantity: 34 }]);
  });

  it("are as many as their packs hold, which are no batteries and no places", () => {
    expect(
      stock("Item,Pack size,Full packs,Loose,Expiry\nAdult pads,10,2,3,2027-05\nChild pads,5,1,0,2027-05\n"),
    ).toEqual([23, 5]);
    expect(stock("Description,Qty/pk,Packs on shelf,Expiry\nPads,2,6,2027-05\nPaper,10,3,2028-05\n")).toEqual([12, 30]);
  });

  it("stand in one cell with those in boxes of a size", () => {
    expect(stock("Item,Qty,Expiry\nAdult pads,2 bx of 10,2027-05\nGel,1 box (5) + 3 loose,2027-05\n")).toEqual([20, 8]);
  });

  it("are not counted where nothing says what a box holds", () => {
    const { fleet, setAside } = read({ "stock.csv": "Item,Boxes,Expiry\nAdult pads,3,2027-05\n" });
    expect([fleet.datedStock, setAside.map(({ reason }) => reason)]).toEqual([[], ["boxes-unknown"]]);
  });

  it("leave a heading that says what a box holds alone where the units are counted", () => {
    expect(stock("Item,Quantity,Box,Expiry\nAdult pads,3,10,2027-05\n")).toEqual([3]);
  });

  it("tell an order from a price list", () => {
    const { fleet } = read({
      "orders.csv":
        "Order ref,Ordered,Item,Boxes,Units per box,Price per box,ETA\nPO-1,2026-10-20,Adult pads,4,10,285.00,w/c 14 Dec 2026\nPO-2,2026-11-01,Paper,2,12,28.80,15 Jan 2027\n",
    });
    expect(fleet.onOrder.map(({ order, quantity, arrives }) => [order, quantity, arrives])).toEqual([
      ["PO-1", 40, dayFromIso("2026-12-14")],
      ["PO-2", 24, dayFromIso("2027-01-15")],
    ]);
    expect(fleet.catalogue).toEqual([]);
  });
});
