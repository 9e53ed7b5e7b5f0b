import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { SHEETS } from "../../src/fleet/columns.ts";
import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import { policyChoicesIn } from "../../src/sheets/policy-choices.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF, read, textFile } from "./sheet-file.ts";

describe("readSheets", () => {
  it("recognises every canonical sheet by its columns, whatever the file is called", () => {
    for (const { kind, columns } of SHEETS) {
      const reading = read({ "x.csv": `${columns.map(({ name }) => name).join(",")}\n` });
      expect(reading.inputs.map(({ kinds }) => kinds)).toEqual([[kind]]);
      expect(reading.inputs[0]?.columns.map(({ field }) => field)).toEqual(columns.map(({ name }) => name));
    }
  });

  it("recognises every canonical sheet by its required columns alone", () => {
    for (const { kind, columns, oneOf } of SHEETS) {
      const names = columns.filter((column) => column.required || column.field === oneOf[0]).map(({ name }) => name);
      expect(read({ "x.csv": `${names.join(",")}\n` }).inputs.map(({ kinds }) => kinds)).toEqual([[kind]]);
    }
  });

  it("reads packs with leading zeros kept, blanks as null and dates as days", () => {
    const { fleet, inputs } = read("serial,item,in_service,cycles\n 000817 ,P1,2022-04-11,214\nB2,,,\n");
    expect(fleet.packs).toHaveLength(2);
    expect(fleet.packs[0]).toMatchObject({ serial: "000817", item: "P1", cycles: 214, device: null });
    expect(isoFromDay(fleet.packs[0]!.inService!)).toBe("2022-04-11");
    expect(fleet.packs[0]!.source).toEqual({ file: "sheet.csv", sheet: null, line: 2 });
    expect(inputs[0]).toMatchObject({ rows: 2, used: 2, setAside: 0, headerLines: [1] });
  });

  it("sets a row aside for a bad required cell and for an absurd measurement, and names the place", () => {
    const { fleet, setAside, findings, inputs } = read(
      "serial,date,percent\nA,2026-05-01,87\nA,soon,86\nA,2026-07-01,870 %\nA,2026-12-24,80\n,2026-08-01,80\n",
    );
    expect(fleet.runtimeTests.map(({ percent }) => percent)).toEqual([87]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([
      [3, "date-unreadable"],
      [4, "number-out-of-range"],
      [5, "date-after-as-of"],
      [6, "missing-required"],
    ]);
    expect(findings.find(({ code }) => code === "number-out-of-range")).toMatchObject({
      line: 4,
      column: 3,
      value: "870 %",
    });
    expect(inputs[0]).toMatchObject({ rows: 5, used: 1, setAside: 4 });
  });

  it("empties a bad optional cell, uses the row and groups the finding over its lines", () => {
    const { fleet, findings } = read("serial,cycles\nA,many\nB,99999\nC,few\nD,7\n");
    expect(fleet.packs.map(({ cycles }) => cycles)).toEqual([null, null, null, 7]);
    expect(findings.filter(({ code }) => code === "number-unreadable")).toMatchObject([
      { line: 2, lines: [4], column: 2, value: "many", severity: "warning" },
    ]);
  });

  it("settles day and month by the column, never by the row", () => {
    const settled = read("item,expiry\nG,03/04/2027\nG,25/12/2027\n");
    expect(settled.fleet.datedStock.map(({ expiry }) => isoFromDay(expiry))).toEqual(["2027-04-03", "2027-12-25"]);
    expect(settled.inputs[0]?.columns[1]?.dateOrder).toBe("dmy");
    const open = read("item,expiry\nG,03/04/2027\nG,05/06/2027\n");
    expect(open.fleet.datedStock).toEqual([]);
    expect(open.setAside.map(({ reason }) => reason)).toEqual(["date-order-unsettled", "date-order-unsettled"]);
    expect(open.findings).toMatchObject([{ code: "date-order-unsettled", line: null, column: 2 }]);
    const chosen = read("item,expiry\nG,03/04/2027\nG,05/06/2027\n", "mdy");
    expect(chosen.fleet.datedStock.map(({ expiry }) => isoFromDay(expiry))).toEqual(["2027-03-04", "2027-05-06"]);
    const both = read("item,expiry\nG,25/12/2027\nG,12/25/2027\n", "dmy");
    expect(both.setAside.map(({ reason }) => reason)).toEqual(["date-order-contradicts", "date-order-contradicts"]);
  });

  it("reads a month alone as its last day for expiry, its first for in_service, and never past as-of elsewhere", () => {
    const { fleet } = read({
      "a.csv": "item,expiry,made,opened\nG,2027-02,2026-02,2026-03\n",
      "b.csv": "serial,in_service,cycles,cycles_on\nA,05/2025,1,2026-11\n",
      "c.csv": "serial,date,percent\nA,2026-10,90\n",
    });
    const [stock] = fleet.datedStock;
    expect([stock!.expiry, stock!.made!, stock!.opened!].map(isoFromDay)).toEqual([
      "2027-02-28",
      "2026-02-01",
      "2026-03-01",
    ]);
    expect([fleet.packs[0]!.inService!, fleet.packs[0]!.cyclesOn!].map(isoFromDay)).toEqual([
      "2025-05-01",
      "2026-11-01",
    ]);
    expect(isoFromDay(fleet.runtimeTests[0]!.date)).toBe("2026-10-31");
  });

  it("reads 0.95, 95 and 95 % as one service level, and takes no certainty for one", () => {
    const { fleet, findings } = read(
      "item,kind,service_level\na,pads,0.95\nb,pads,95\nc,pads,95 %\nd,pads,1\ne,pads,100 %\nf,pads,0\n",
    );
    expect(fleet.catalogue.map(({ serviceLevel }) => serviceLevel)).toEqual([0.95, 0.95, 0.95, null, null, null]);
    expect(findings).toMatchObject([{ code: "number-out-of-range", severity: "warning", line: 5, lines: [6, 7] }]);
  });

  it("takes no roll of paper without length, and says what was expected", () => {
    const { fleet, findings } = read("item,kind,unit_length_m\na,paper,0\nb,paper,30\n");
    expect(fleet.catalogue.map(({ unitLengthM }) => unitLengthM)).toEqual([null, 30]);
    expect(findings[0]!.message).toBe(
      '"0" in column "unit_length_m" (C) is out of bounds; a number from 1 to 1,000 was expected.',
    );
  });

  it("reads a part of a day, month or unit as the whole one that is safe to plan with", () => {
    const { fleet } = read(
      "item,kind,lead_days,shelf_months,arrives_with_months,opened_days,per_device\n" +
        "a,pads,2.5,30.5,22.9,29.5,1.5\nb,gel,1.5 weeks,2.5 years,12,30,2\n",
    );
    expect(fleet.catalogue).toMatchObject([
      { leadDays: 3, shelfMonths: 30, arrivesWithMonths: 22, openedDays: 29, perDevice: 2 },
      { leadDays: 11, shelfMonths: 30, arrivesWithMonths: 12, openedDays: 30, perDevice: 2 },
    ]);
  });

  it("reads 87, 0.87 and 87 % as one capacity", () => {
    const { fleet } = read(
      "serial,date,percent\nA,2026-01-01,87\nA,2026-01-02,0.87\nA,2026-01-03,87 %\nA,2026-01-04,1\n",
    );
    expect(fleet.runtimeTests.map(({ percent }) => percent)).toEqual([87, 87, 87, 100]);
  });

  it("sets repeats aside, keeps the fuller row, and sets all sides of a clash aside", () => {
    const { fleet, setAside } = read({
      "a.csv": "serial,site,cycles\nA,North,\nB,North,5\nC,North,9\n",
      "b.csv": "serial,site,cycles\n a ,north,12\nB,South,5\nC,North,9\n",
    });
    expect(fleet.packs.map(({ serial, cycles }) => [serial, cycles])).toEqual([
      ["C", 9],
      ["a", 12],
    ]);
    expect(setAside.map(({ file, line, reason }) => [file, line, reason])).toEqual([
      ["a.csv", 2, "repeat"],
      ["a.csv", 3, "clash"],
      ["b.csv", 3, "clash"],
      ["b.csv", 4, "repeat"],
    ]);
  });

  it("names the physical line where a record starts, over quoted line ends and blank lines", () => {
    const { fleet } = read('item,expiry,place\r\nG,2027-01-01,"Room\r\n1"\r\n\r\nG,2027-02-01,Store\r\n');
    expect(fleet.datedStock.map(({ source }) => source.line)).toEqual([2, 5]);
  });

  it("finds policy choices before anything else is read", () => {
    const files = [textFile("p.csv", "key,value\nas_of,1 Nov 2026\nservice_level,95 %\n")];
    expect(policyChoicesIn(files)).toEqual([
      { key: "as_of", value: "2026-11-01" },
      { key: "service_level", value: "0.95" },
    ]);
  });

  // three digits after a point: a fraction where English is written, thousands in most of Europe (common practice, no source)
  it("leaves a budget whose point may part thousands as it stands", () => {
    const chosen = (budget: string) =>
      policyChoicesIn([textFile("p.csv", `key,value\nbudget_per_fiscal_year,${budget}\n`)]);
    expect(chosen("12.000")).toEqual([{ key: "budget_per_fiscal_year", value: "12.000" }]);
    expect(chosen("EUR 12.000")).toEqual([{ key: "budget_per_fiscal_year", value: "EUR 12.000" }]);
    expect(chosen('"12,000"')).toEqual([{ key: "budget_per_fiscal_year", value: "12000" }]);
    expect(chosen('"5.000,00"')).toEqual([{ key: "budget_per_fiscal_year", value: "5000" }]);
    expect(chosen("12000.50")).toEqual([{ key: "budget_per_fiscal_year", value: "12000.5" }]);
  });

  it("turns boxes into units by the catalogue, and sets the row aside without it", () => {
    const { fleet, setAside } = read({
      "a.csv": "item,kind,units_per_box\nG,gel,12\n",
      "b.csv": "item,expiry,quantity\nG,2027-01-01,2 boxes\nH,2027-01-01,x10\nJ,2027-01-01,1 box\n",
    });
    expect(fleet.datedStock.map(({ item, quantity }) => [item, quantity])).toEqual([
      ["G", 24],
      ["H", 10],
    ]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([[4, "boxes-unknown"]]);
  });

  it("accounts for every row and throws for no text", () => {
    const cell = fc.oneof(
      fc.constantFrom(
        "",
        "A1",
        "2026-01-02",
        "03/04/2026",
        "87",
        "0,9",
        "n/a",
        "Total",
        "-5",
        "2 boxes",
        "yes",
        "'=1+1",
        '"x',
        "__proto__",
      ),
      fc.string({ maxLength: 12 }),
    );
    const header = fc.constantFrom(...SHEETS.map(({ columns }) => columns.map(({ name }) => name)));
    fc.assert(
      fc.property(header, fc.array(fc.array(cell, { maxLength: 14 }), { maxLength: 12 }), (names, rows) => {
        const text = `${names.join(",")}\n${rows.map((cells) => cells.join(",")).join("\n")}\n`;
        const { inputs, setAside } = readSheets([textFile("f.csv", text)], { asOf: AS_OF, dateOrder: null });
        for (const table of inputs) expect(table.rows).toBe(table.used + table.setAside);
        expect(inputs.reduce((sum, table) => sum + table.setAside, 0)).toBe(setAside.length);
      }),
      { seed: 11, numRuns: 400 },
    );
  });
});

describe("canonicalRows", () => {
  it("names columns as the sheets do, with ISO dates, yes and no, and lists as text", () => {
    const { fleet } = read({
      "c.csv": "item,kind,price,price_breaks,fits\nP1,battery,38.5,10:36; 50:35,T1;T2\n",
      "t.csv": "serial,date,minutes,full_charge\nA,2026-01-02,1:12,ja\n",
    });
    const rows = canonicalRows(fleet);
    expect(rows.catalogue[0]).toMatchObject({
      item: "P1",
      kind: "pack",
      price: "38.50",
      price_breaks: "10:36; 50:35",
      fits: "T1; T2",
    });
    expect(rows.runtime_tests[0]).toMatchObject({
      date: "2026-01-02",
      minutes: 72,
      full_charge: "yes",
      at_least: null,
    });
    expect(rows.runtime_tests[0]?.source).toEqual({ file: "t.csv", sheet: null, line: 2 });
  });
});
