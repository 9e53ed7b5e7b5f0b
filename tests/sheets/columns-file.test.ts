import { describe, expect, it } from "vitest";
import { columnsFileOf } from "../../src/sheets/mapping/columns-as-read.ts";
import { parseColumnsFile } from "../../src/sheets/mapping/columns-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF, textFile } from "./sheet-file.ts";

const TIED = "Serial No,Model,Location,Install date\n17,M1,North,2024-02-13\n18,M1,South,2024-02-14\n";
const mapping = (columns: Record<string, string>) =>
  JSON.stringify({
    format: "wanecast.columns/1",
    tables: [{ file: "a.csv", sheet: null, table: 1, rows: [{ kind: "packs", columns }], unread: [] }],
  });

function readWith(text: string, columnsText: string) {
  const parsed = parseColumnsFile(columnsText);
  if ("problem" in parsed) throw new Error(parsed.problem);
  return readSheets([textFile("b.csv", text)], { asOf: AS_OF, dateOrder: null, columns: parsed.columns });
}

describe("columns files", () => {
  it("settle a header that fits two kinds, in next quarter's file too", () => {
    const reading = readWith(
      TIED,
      mapping({ serial: "Serial No", item: "Model", site: "Location", in_service: "Install date" }),
    );
    expect(reading.fleet.packs.map(({ serial, item, site }) => [serial, item, site])).toEqual([
      ["17", "M1", "North"],
      ["18", "M1", "South"],
    ]);
    expect(reading.inputs[0]?.columns.map(({ by }) => by)).toEqual(["mapping", "mapping", "mapping", "mapping"]);
  });

  it("name columns that no word of the header would", () => {
    const reading = readWith("xx,yy,zz\nA,12,2024-02-13\n", mapping({ serial: "xx", cycles: "yy", in_service: "zz" }));
    expect(reading.fleet.packs).toMatchObject([{ serial: "A", cycles: 12 }]);
  });

  it("say what changed where they no longer fit", () => {
    const reading = readWith("xx,zz,new\nA,2024-02-13,1\n", mapping({ serial: "xx", cycles: "yy", in_service: "zz" }));
    expect(reading.findings.find(({ code }) => code === "mapping-changed")?.message).toBe(
      'The columns are not those of the columns file: "yy" is gone, "new" is new.',
    );
    expect(reading.fleet.packs).toHaveLength(1);
  });

  it("written from a wide register read it the same way again", () => {
    const text =
      "Asset No,Batt S/N,Pad 1 exp,Pad 2 exp,Pad 2 exp note\nD1,B1,2027-01-31,2027-02-28,x\nD2,B2,2027-03-31,2027-04-30,y\n";
    const file = textFile("a.csv", text);
    const options = { asOf: AS_OF, dateOrder: null };
    const columns = columnsFileOf([file]);
    expect(columns.tables[0]?.rows.map(({ kind }) => kind)).toEqual(["devices", "packs", "dated_stock", "dated_stock"]);
    const again = readSheets([textFile("a.csv", text)], { ...options, columns });
    expect(again.fleet).toEqual(readSheets([file], options).fleet);
    expect(parseColumnsFile(JSON.stringify(columns))).toEqual({ columns });
  });

  it("written from a sheet that lists supplies in cells read it the same way again", () => {
    const text = 'Vehicle,Kit\nA 1,"2 x pads exp 03/2027; 1 gel exp 04/2027"\nA 2,1 x pads exp 05/2027\n';
    const file = textFile("a.csv", text);
    const options = { asOf: AS_OF, dateOrder: null };
    const again = readSheets([textFile("a.csv", text)], { ...options, columns: columnsFileOf([file]) });
    expect(again.fleet.datedStock).toHaveLength(3);
    expect(again.fleet).toEqual(readSheets([file], options).fleet);
  });

  it("written from a list whose items carry their lot and expiry read it the same way again", () => {
    const text = 'Item,Qty\n"Adult pads (L1, exp 03/2027)",2\n"Child pads (L2, exp 04/2027)",3\n';
    const file = textFile("a.csv", text);
    const options = { asOf: AS_OF, dateOrder: null };
    const { fleet } = readSheets([file], options);
    expect(fleet.datedStock.map(({ item, lot, quantity }) => [item, lot, quantity])).toEqual([
      ["Adult pads", "L1", 2],
      ["Child pads", "L2", 3],
    ]);
    expect(readSheets([textFile("a.csv", text)], { ...options, columns: columnsFileOf([file]) }).fleet).toEqual(fleet);
  });

  it("written from tests with their rating beside them read them the same way again", () => {
    const text = "Serial,Test date,Ah,Rated Ah\nB-1,2026-01-05,2.5,4\n";
    const file = textFile("a.csv", text);
    const options = { asOf: AS_OF, dateOrder: null };
    const again = readSheets([textFile("a.csv", text)], { ...options, columns: columnsFileOf([file]) });
    expect(again.fleet.runtimeTests[0]?.percent).toBe(62.5);
    expect(again.fleet).toEqual(readSheets([file], options).fleet);
  });

  it("written from a list of all sorts read it the same way again, as what each line says it is", () => {
    const text =
      "Type,Model,Serial,Lot,Expiry,Site\nAED,M,A1,,,North\nBattery,B,B1,,,North\nBattery,B,B2,,2028-01-31,North\nPads,P,,L1,2027-01-31,North\n";
    const file = textFile("a.csv", text);
    const options = { asOf: AS_OF, dateOrder: null };
    const columns = columnsFileOf([file]);
    const again = readSheets([textFile("a.csv", text)], { ...options, columns });
    expect(again.fleet).toEqual(readSheets([file], options).fleet);
    expect(again.fleet.packs.map(({ serial }) => serial)).toEqual(["B1", "B2"]);
    expect(again.setAside).toEqual([]);
    expect(again.findings.map(({ code }) => code)).toEqual(["things-by-row", "holder-presumed"]);
    expect(parseColumnsFile(JSON.stringify(columns))).toEqual({ columns });
  });

  it.each([
    ["{", "The columns file is no JSON"],
    ['{"format":"wanecast.columns/2","tables":[]}', "The columns file cannot be used at format"],
    [mapping({ colour: "xx" }), 'at tables.0.rows.0: "colour" is no column of packs'],
    [mapping({ serial: "" }), "at tables.0.rows.0.columns.serial: Too small"],
    ['{"format":"wanecast.columns/1","tables":{}}', "at tables: Invalid input: expected array"],
    ['{"format":"wanecast.columns/1","tables":[],"more":1}', 'Unrecognized key: "more"'],
    ['{"format":"wanecast.columns/1","tables":[],"__proto__":{}}', 'Unrecognized key: "__proto__"'],
    [
      mapping({ serial: "xx" }).replace('"packs"', '"packets"'),
      'at tables.0.rows.0.kind: Invalid option: expected one of "devices"|"packs"',
    ],
    [
      mapping({ serial: "xx" }).replace('"table":1', '"table":0'),
      "at tables.0.table: Too small: expected number to be >=1",
    ],
    ['{"format":"wanecast.plan/1"}', "but wanecast.plan/1: hand over the sheets themselves"],
    ['{"format":"wanecast.columns/2","tables":[]}', 'expected "wanecast.columns/1"'],
    ["[]", "The columns file cannot be used: Invalid input: expected object"],
    ["null", "The columns file cannot be used: Invalid input: expected object"],
  ])("refuse %s with what is wrong", (text, words) => {
    const parsed = parseColumnsFile(text);
    expect("problem" in parsed ? parsed.problem : "").toContain(words);
  });

  it("keep what a list says of its items besides, and read no more of it", () => {
    const text =
      "Item,Lot,Expiry,Supplier,Unit price\nPads,A1,2027-03-31,Corrigan,38.50\nPads,A2,2027-09-30,Corrigan,38.50\n";
    const file = textFile("b.csv", text);
    const again = readWith(text, JSON.stringify(columnsFileOf([file])));
    expect(again.fleet.datedStock).toHaveLength(2);
    expect(again.fleet.catalogue).toMatchObject([{ item: "Pads", kind: "pads", supplier: "Corrigan" }]);
    const plain = readSheets([file], { asOf: AS_OF, dateOrder: null });
    expect(again.fleet.catalogue).toEqual(
      plain.fleet.catalogue.map((row) => ({ ...row, source: again.fleet.catalogue[0]!.source })),
    );
  });

  it("take a catalogue with a kind of its own for one proper, also beside stock", () => {
    const columns = { item: "i", kind: "k", minimum_order: "m", units_per_box: "u" };
    const stock = { kind: "dated_stock", columns: { item: "i", expiry: "e" } };
    const tables = [
      { file: "b.csv", sheet: null, table: 1, rows: [{ kind: "catalogue", columns }, stock], unread: [] },
    ];
    const reading = readWith(
      "i,k,e,m,u\nPads,pads,2027-03-31,2 boxes,10\n",
      JSON.stringify({ format: "wanecast.columns/1", tables }),
    );
    expect(reading.fleet.catalogue).toMatchObject([{ item: "Pads", kind: "pads", minimumOrder: 20 }]);
    expect(reading.fleet.datedStock).toHaveLength(1);
  });
});
