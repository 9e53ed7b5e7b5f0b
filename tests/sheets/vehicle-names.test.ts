import { describe, expect, it } from "vitest";
import { columnsFileOf } from "../../src/sheets/mapping/columns-as-read.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF, read, textFile } from "./sheet-file.ts";

const STOCK =
  "Site,Vehicle,Item,Expiry\nNorth,Ambulance 7,pads,2027-03-31\nNorth,Ambulance 8,pads,2027-03-31\nSouth,Ambulance 8,pads,2027-03-31\n";

describe("a vehicle at its site", () => {
  it("has one name in all sheets, where only one is called so", () => {
    const { fleet } = read({
      "stock.csv": STOCK,
      "used.csv": "date,item,quantity,place\n2026-05-01,pads,1,Ambulance 7\n2026-06-01,pads,1,Ambulance 8\n",
    });
    expect(fleet.useLog.map(({ place }) => place)).toEqual(["North, Ambulance 7", "Ambulance 8"]);
  });

  it("goes by its own name where a device is called so", () => {
    const { fleet } = read({ "devices.csv": "device,site\nAmbulance 7,North\n", "stock.csv": STOCK });
    expect(fleet.datedStock.map(({ place }) => place)).toEqual([
      "Ambulance 7",
      "North, Ambulance 8",
      "South, Ambulance 8",
    ]);
  });

  it("is read the same way by the columns file written from it", () => {
    const file = textFile("stock.csv", STOCK);
    const options = { asOf: AS_OF, dateOrder: null };
    const again = readSheets([textFile("stock.csv", STOCK)], { ...options, columns: columnsFileOf([file]) });
    expect(again.fleet).toEqual(readSheets([file], options).fleet);
  });
});
