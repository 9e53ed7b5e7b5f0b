import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const stock = (text: string) => read({ "stock.csv": text }).fleet.datedStock;

describe("columns of numbers in a list of stock", () => {
  it("hold nothing back where they count what is reserved", () => {
    const rows = stock("Item,Lot,Use by,On hand,Reserved\nAdult pads,K1,2027-05-31,24,4\nGel,G1,2028-08-31,6,0\n");
    expect(rows.map(({ quantity, held }) => [quantity, held])).toEqual([
      [24, null],
      [6, null],
    ]);
  });

  it.each(["Stock,Stock réservé", "Quantity,Reserve quantity"])(
    "count all units beside those in reserve: %s",
    (heads) => {
      const rows = stock(`Item,${heads},Expiry,Lot\nAdult pads,12,2,2027-05-31,K1\nGel,6,0,2028-08-31,G1\n`);
      expect(rows.map(({ quantity }) => quantity)).toEqual([12, 6]);
    },
  );

  it.each(["Auf Lager", "Am Lager", "Op voorraad"])("are no places where they say what is in stock: %s", (head) => {
    const rows = stock(`Item,${head},Expiry\nAdult pads,12,2027-05-31\nGel,6,2028-08-31\n`);
    expect(rows.map(({ quantity, place }) => [quantity, place])).toEqual([
      [12, null],
      [6, null],
    ]);
  });
});

describe("a column of dates", () => {
  it("is no duty, whatever its heading may mean besides", () => {
    const { fleet } = read({
      "packs.csv": "Akku;Gerät;Ersteinsatz;Ladezyklen\nB1;D1;23.05.2023;210\nB2;D2;24.05.2023;255\n",
    });
    expect(fleet.packs.every(({ inService }) => inService !== null)).toBe(true);
    expect(fleet.devices.every(({ duty }) => duty === null)).toBe(true);
  });
});
