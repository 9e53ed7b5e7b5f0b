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

  // By hand: a number that a heading had stays, since the two are not one column told twice; one that was added goes
  it("keeps the numbers that headings had, and takes away those that it added", () => {
    const head = "file,sheet,line,reason,message";
    const numbered = read({ "set-aside.csv": `${head},AED,Batt S/N #1,Batt S/N #2\nold.csv,,4,repeat,x,D9,S5,S6\n` });
    expect(numbered.fleet.packs.map(({ serial, device }) => [serial, device])).toEqual([
      ["S5", "D9"],
      ["S6", "D9"],
    ]);
    const twice = "serial,date,percent,percent\nP1,2026-02-28,90,\nP2,2026-02-30,,91\n";
    const { setAside, inputs } = read({ "tests.csv": twice });
    const written = setAsideCsv(setAside, inputs);
    expect(written).toContain(`${head},serial,date,percent,percent #2\r\n`);
    expect(
      read({ "set-aside.csv": written.replace(",P2,2026-02-30", ",P2,2026-02-28") }).fleet.runtimeTests,
    ).toMatchObject([{ serial: "P2", percent: 91 }]);
  });

  // By hand: what stands in brackets before a heading of the sheet's own is no table's name
  it("tells a heading that begins with a bracket from a table's name", () => {
    const { setAside, inputs } = read({ "stock.csv": "item,expiry,[a] lot\nA,soon,L1\n" });
    const again = read({ "set-aside.csv": setAsideCsv(setAside, inputs).replace(",soon,", ",2027-02-28,") });
    expect(again.inputs.map(({ columns }) => columns.map(({ header }) => header))).toEqual([
      ["item", "expiry", "[a] lot"],
    ]);
  });

  it("of one table alone needs no table's name in its headers", () => {
    const { setAside, inputs } = read({ "stock.csv": SHEETS["stock.csv"] });
    expect(setAsideCsv(setAside, inputs).split("\r\n")[0]).toBe(
      "file,sheet,line,reason,message,item,expiry,quantity,comment",
    );
  });
});
