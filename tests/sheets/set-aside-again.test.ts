import { describe, expect, it } from "vitest";
import { setAsideCsv } from "../../src/out/set-aside-csv.ts";
import { read } from "./sheet-file.ts";

describe("set-aside.csv", () => {
  const SHEETS = {
    "stock.csv": "item,expiry,quantity,comment\nA,2027-01-31,4,x\nB,soon,2,y\nTotal,,6,\n",
    "packs.csv": ",,Battery,\nDevice,Site,S/N,Cycles\nD1,North,,12\n,,,\n",
    "tests.csv": "serial,date,percent\nP1,2026-02-30,90\n",
  };

  it("keeps every row under the headers it had", () => {
    const { setAside, inputs } = read(SHEETS);
    const [header, ...rows] = setAsideCsv(setAside, inputs).trim().split("\r\n");
    expect(header).toContain("[stock.csv] expiry");
    expect(rows).toHaveLength(3);
    expect(rows[0]).toContain("stock.csv,,3,date-unreadable");
  });

  it("read again once it is corrected gives the rows that were missing", () => {
    const { setAside, inputs } = read(SHEETS);
    const corrected = setAsideCsv(setAside, inputs)
      .replace(",B,soon,", ",B,2027-02-28,")
      .replace(",P1,2026-02-30,", ",P1,2026-02-28,");
    const again = read({ "set-aside.csv": corrected });
    expect(again.fleet.datedStock).toMatchObject([{ item: "B", quantity: 2 }]);
    expect(again.fleet.runtimeTests).toMatchObject([{ serial: "P1", percent: 90 }]);
    expect(again.setAside.map(({ reason }) => reason)).toEqual(["total-row"]);
  });

  it("of one table alone needs no table's name in its headers", () => {
    const { setAside, inputs } = read({ "stock.csv": SHEETS["stock.csv"] });
    expect(setAsideCsv(setAside, inputs).split("\r\n")[0]).toBe(
      "file,sheet,line,reason,message,item,expiry,quantity,comment",
    );
  });
});
