import { deflateRawSync } from "node:zlib";
import { type Cell, writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { formatMeaning } from "../../src/sheets/workbook/number-format.ts";
import { zipDirectory } from "../../src/sheets/workbook/zip-directory.ts";
import { AS_OF } from "./sheet-file.ts";

type Value = string | number | boolean | null;
interface Tab {
  name: string;
  rows: Value[][];
  /** Number formats by "row,column". */
  formats?: Record<string, string>;
  errors?: string[];
  merges?: [number, number, number, number][];
  hidden?: boolean;
}

async function workbook(tabs: Tab[], dateSystem: "1900" | "1904" = "1900"): Promise<Uint8Array> {
  return writeXlsx({
    dateSystem,
    sheets: tabs.map(({ name, rows, formats = {}, errors = [], merges = [], hidden = false }) => {
      const cells = new Map<string, Partial<Cell>>();
      const at = (place: string) => place.split(",").map(Number) as [number, number];
      for (const [place, numFmt] of Object.entries(formats)) {
        const [row, column] = at(place);
        cells.set(place, { value: rows[row]![column]!, type: "number", style: { numFmt } });
      }
      for (const place of errors) cells.set(place, { value: rows[at(place)[0]]![at(place)[1]]!, type: "error" });
      return {
        name,
        rows,
        cells,
        hidden,
        merges: merges.map(([startRow, startCol, endRow, endCol]) => ({ startRow, startCol, endRow, endCol })),
      };
    }),
  });
}

async function read(bytes: Uint8Array) {
  const files = [{ name: "w.xlsx", bytes }];
  await openWorkbooks(files);
  return readSheets(files, { asOf: AS_OF, dateOrder: null });
}

describe("readSheets: workbooks", () => {
  // Source: published pairs of the spreadsheet date systems; 1900: serial = days since 1899-12-30, 1904 begins 1462 days later.
  it.each([
    ["1900", 36161, "1999-01-01"],
    ["1900", 36526, "2000-01-01"],
    ["1900", 39448, "2008-01-01"],
    ["1900", 40179, "2010-01-01"],
    ["1900", 45351, "2024-02-29"],
    ["1900", 46351, "2026-11-25"],
    ["1904", 35064, "2000-01-01"],
    ["1904", 44889, "2026-11-25"],
  ] as const)("reads the %s date %i as %s", async (system, serial, iso) => {
    const tab = {
      name: "A",
      rows: [
        ["item", "expiry"],
        ["G", serial],
      ],
      formats: { "1,1": "dd/mm/yyyy" },
    };
    const { fleet } = await read(await workbook([tab], system));
    expect(canonicalRows(fleet).dated_stock[0]?.expiry).toBe(iso);
  });

  it("takes a tab's name for the place of its stock where the tabs are stations and no column says it", async () => {
    const stock = (name: string, lot: string): Tab => ({
      name,
      rows: [
        ["Item", "Lot", "Expires", "Qty"],
        ["Adult pads", lot, "2027-05-31", 4],
      ],
    });
    const { fleet, findings } = await read(await workbook([stock("Station 1", "L1"), stock("Station 2", "L2")]));
    expect(canonicalRows(fleet).dated_stock).toMatchObject([
      { lot: "L1", place: "Station 1" },
      { lot: "L2", place: "Station 2" },
    ]);
    expect(findings.map(({ code }) => code)).toEqual(["from-heading", "from-heading"]);
    const sorts = await read(await workbook([stock("Child pads", "L1"), stock("2027", "L2")]));
    expect(canonicalRows(sorts.fleet).dated_stock).toMatchObject([{ place: null }, { place: null }]);
  });

  it("reads a form in each tab, with merged cells and dates as numbers, at the place that its tab is", async () => {
    const form = (name: string, device: string, expiry: number): Tab => ({
      name,
      rows: [
        ["AED CHECK FORM", null, null, null],
        ["Device:", device, "Checked on:", 46300],
        ["Adult pads expiry:", expiry, "Adult pads lot:", "L1"],
        ["Status:", "OK", "Remarks:", null],
      ],
      formats: { "1,3": "dd/mm/yyyy", "2,1": "dd/mm/yyyy" },
      merges: [[0, 0, 0, 3]],
    });
    const { fleet, findings } = await read(
      await workbook([form("Station 1", "AED 1", 46447), form("Station 2", "AED 2", 46478)]),
    );
    expect(fleet.devices.map(({ device, site }) => [device, site])).toEqual([
      ["AED 1", "Station 1"],
      ["AED 2", "Station 2"],
    ]);
    // serial 46351 is 2026-11-25: 96 and 127 days on
    expect(canonicalRows(fleet).dated_stock).toMatchObject([
      { item: "Adult pads", lot: "L1", place: "AED 1", expiry: "2027-03-01" },
      { item: "Adult pads", lot: "L1", place: "AED 2", expiry: "2027-04-01" },
    ]);
    const told = findings.filter(({ code }) => code === "told-as-list").map(({ sheet }) => sheet);
    expect(told).toEqual(["Station 1, as a list", "Station 2, as a list"]);
  });

  it("takes serials on a tab of batteries for theirs, whatever device their description names", async () => {
    const rows: Value[][] = [
      ["Serial No", "Description", "In service", "Dept"],
      ["B1", "Defibrillator", "2023-05-12", "ICU"],
      ["B2", "Monitor", "2023-05-13", "ED"],
    ];
    const { fleet } = await read(await workbook([{ name: "Batteries", rows }]));
    expect([fleet.packs.map(({ serial }) => serial), fleet.devices]).toEqual([["B1", "B2"], []]);
    const register = await read(await workbook([{ name: "Equipment", rows }]));
    expect([register.fleet.packs, register.fleet.devices.map(({ device }) => device)]).toEqual([[], ["B1", "B2"]]);
  });

  it("reads cells as people see them: leading zeros, percent, clock times, months alone, merged cells, totals", async () => {
    const rows: Value[][] = [
      ["Battery register 2026"],
      [],
      ["Batt S/N", "Station", "Installed", "Cycles", "Pad exp", "Capacity", "Runtime", "Last test"],
      [817, "North", 44634, 100, 46447, 0.87, 0.05, 46095],
      [818, null, 44635, 120, 46478, 0.9, 0.0625, 46096],
      ["Total", null, null, 220],
    ];
    const formats = Object.fromEntries(
      [3, 4].flatMap((row) => [
        [`${row},0`, "000000"],
        [`${row},2`, "dd/mm/yyyy"],
        [`${row},4`, "mmm-yy"],
        [`${row},5`, "0%"],
        [`${row},6`, "[h]:mm"],
        [`${row},7`, "d-mmm-yy"],
      ]),
    );
    const { fleet, setAside, inputs } = await read(
      await workbook([
        {
          name: "Fleet",
          rows,
          formats,
          merges: [
            [0, 0, 0, 7],
            [3, 1, 4, 1],
          ],
        },
      ]),
    );
    const { packs, runtime_tests: tests, dated_stock: stock } = canonicalRows(fleet);
    expect(packs).toMatchObject([
      { serial: "000817", site: "North", in_service: "2022-03-14", cycles: 100 },
      { serial: "000818", site: "North", in_service: "2022-03-15", cycles: 120 },
    ]);
    expect(tests).toMatchObject([
      { serial: "000817", date: "2026-03-14", minutes: 72, percent: 87 },
      { serial: "000818", date: "2026-03-15", minutes: 90, percent: 90 },
    ]);
    expect(stock).toMatchObject([
      { expiry: "2027-03-31", place: "North" },
      { expiry: "2027-04-30", place: "North" },
    ]);
    expect(setAside).toMatchObject([
      { sheet: "Fleet", line: 6, reason: "total-row", cells: ["Total", null, null, 220] },
    ]);
    expect(inputs).toMatchObject([{ sheet: "Fleet", headerLines: [3], rows: 3, used: 2, setAside: 1 }]);
  });

  it("reads hidden tabs, merged groups and error cells, and says so", async () => {
    const rows: Value[][] = [
      [null, "Adult pads", null, "Child pads", null],
      ["Device", "Lot", "Exp", "Lot", "Exp"],
      ["D1", "L1", "2027-01-31", "C1", "2027-02-28"],
      ["D2", "L2", "2027-01-31", "C2", "#N/A"],
    ];
    const { fleet, findings } = await read(
      await workbook([
        { name: "Front", rows: [["Nothing to see"]] },
        {
          name: "Stock",
          rows,
          errors: ["3,4"],
          merges: [
            [0, 1, 0, 2],
            [0, 3, 0, 4],
          ],
          hidden: true,
        },
      ]),
    );
    expect(fleet.datedStock.map(({ item, lot, place }) => [item, lot, place])).toEqual([
      ["Adult pads", "L1", "D1"],
      ["Child pads", "C1", "D1"],
      ["Adult pads", "L2", "D2"],
    ]);
    expect(findings.map(({ code, sheet }) => [code, sheet])).toEqual([
      ["no-table", "Front"],
      ["hidden-read", "Stock"],
      ["error-cell", "Stock"],
    ]);
  });

  it("refuses a workbook cut short, and an archive that unpacks too far", async () => {
    const whole = await workbook([{ name: "A", rows: [["serial"], ["A1"]] }]);
    expect((await read(whole.slice(0, whole.length - 40))).refused).toMatchObject([{ code: "truncated" }]);
    const bomb = zipOf("xl/workbook.xml", new Uint8Array(60 * 1024 * 1024));
    expect(zipDirectory(bomb)).toMatchObject([{ name: "xl/workbook.xml", unpacked: 60 * 1024 * 1024 }]);
    expect((await read(bomb)).refused).toMatchObject([{ code: "unpacks-too-large" }]);
    const liar = zipOf("xl/workbook.xml", new Uint8Array(60 * 1024 * 1024), 0);
    expect((await read(liar)).refused).toMatchObject([{ code: "unpacks-too-large" }]);
    expect((await read(zipOf("word/document.xml", new Uint8Array(10)))).refused).toMatchObject([
      { code: "not-a-workbook" },
    ]);
    expect((await read(zipOf("xl/workbook.xml", new Uint8Array(10)))).refused).toMatchObject([{ code: "damaged" }]);
  });
});

describe("formatMeaning", () => {
  it.each([
    ["000000", { digits: 6 }],
    ["0%", { percent: true }],
    ["0.0%", { percent: true }],
    ['0.0 "min"', { unit: "min" }],
    ["mmm-yy", { time: "month" }],
    ["mm/yyyy", { time: "month" }],
    ["[$-409]d-mmm-yy", { time: "day" }],
    ["dd.mm.yyyy", { time: "day" }],
    ["yyyy-mm-dd hh:mm", { time: "day" }],
    ["[h]:mm", { time: "duration" }],
    ["h:mm", { time: "duration" }],
    ["mm:ss", { time: "duration" }],
    ["General", { time: null, digits: 0, percent: false, unit: "" }],
    ["#,##0.00", { time: null }],
  ])("reads %s", (format, expected) => {
    expect(formatMeaning(format)).toMatchObject(expected);
  });
});

/** A zip archive of one deflated entry, as PKWARE's APPNOTE lays it out; the size it states may be a lie. */
function zipOf(name: string, data: Uint8Array, stated = data.length): Uint8Array {
  const packed = deflateRawSync(data);
  const path = new TextEncoder().encode(name);
  const local = new DataView(new ArrayBuffer(30));
  local.setUint32(0, 0x04034b50, true);
  local.setUint16(8, 8, true);
  local.setUint32(18, packed.length, true);
  local.setUint32(22, stated, true);
  local.setUint16(26, path.length, true);
  const entry = new DataView(new ArrayBuffer(46));
  entry.setUint32(0, 0x02014b50, true);
  entry.setUint16(10, 8, true);
  entry.setUint32(20, packed.length, true);
  entry.setUint32(24, stated, true);
  entry.setUint16(28, path.length, true);
  const end = new DataView(new ArrayBuffer(22));
  end.setUint32(0, 0x06054b50, true);
  end.setUint16(8, 1, true);
  end.setUint16(10, 1, true);
  end.setUint32(12, 46 + path.length, true);
  end.setUint32(16, 30 + path.length + packed.length, true);
  const parts = [
    new Uint8Array(local.buffer),
    path,
    packed,
    new Uint8Array(entry.buffer),
    path,
    new Uint8Array(end.buffer),
  ];
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
