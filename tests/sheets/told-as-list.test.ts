import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { isoOrNull } from "../../src/calendar/day.ts";
import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import { parseColumnsFile } from "../../src/sheets/mapping/columns-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { madeRegister } from "./made-registers/made-register.ts";
import { AS_OF, read, textFile } from "./sheet-file.ts";

const REGISTERS = 60;

/** A register's rows, names first. */
const rowsOf = (seed: number) => Papa.parse<string[]>(madeRegister(seed).text).data;
/** Cells as CSV. */
const csvOf = (rows: string[][]) => Papa.unparse(rows, { quotes: true });
/** Rows with their columns as rows. */
const turned = (rows: string[][]) => rows[0]!.map((_, at) => rows.map((cells) => cells[at]!));
/** A form for each record: two labels to a line, each left of its value. */
const forms = ([names, ...records]: string[][]) =>
  records.flatMap((cells) =>
    names!.flatMap((name, at) =>
      at % 2 === 0
        ? [[`${name}:`, cells[at]!, at + 1 < names!.length ? `${names![at + 1]}:` : "", cells[at + 1] ?? ""]]
        : [],
    ),
  );
/** What a sheet tells of the fleet, wherever it stands. */
const told = (rows: string[][]) =>
  JSON.parse(JSON.stringify(canonicalRows(read({ "register.csv": csvOf(rows) }).fleet)), (key, value) =>
    key === "source" ? undefined : value,
  );

describe("a register in another layout tells the same fleet", () => {
  // nobody gives more records than these a column or a form each, and names few of them by three labels
  const seeds = Array.from({ length: REGISTERS }, (_, seed) => seed + 1).filter((seed) => {
    const rows = rowsOf(seed);
    return rows.length <= 16 && rows[0]!.length >= 6;
  });

  it("turned, a column for each device", () => {
    for (const seed of seeds) expect([seed, told(turned(rowsOf(seed)))]).toEqual([seed, told(rowsOf(seed))]);
  });

  it("as forms below each other, a form for each device", () => {
    for (const seed of seeds) expect([seed, told(forms(rowsOf(seed)))]).toEqual([seed, told(rowsOf(seed))]);
  });
});

describe("where a list inside a sheet stands", () => {
  const TURNED = "Device,AED 1,AED 2\nPads expiry,2027-03-31,nothing\nBattery expiry,2028-01-31,2028-02-29\n";

  it("is told by its own lines, beside the tab's name", () => {
    const reading = read({ "register.csv": TURNED });
    expect(reading.fleet.devices.map(({ source }) => [source.sheet, source.line])).toEqual([
      ["turned", 2],
      ["turned", 3],
    ]);
    const [found] = reading.findings.filter(({ code }) => code === "told-as-list");
    expect(found!.message).toContain("line 2 is column B, line 3 column C");
  });

  it("is the place of what is put right in it", () => {
    const corrections = [{ sheet: "turned", line: 3, column: 2, text: "2027-04-30" }];
    const file = { ...textFile("register.csv", TURNED), corrections };
    const { fleet } = readSheets([file], { asOf: AS_OF, dateOrder: null });
    expect(fleet.datedStock.map(({ place, expiry }) => [place, isoOrNull(expiry)])).toEqual([
      ["AED 1", "2027-03-31"],
      ["AED 1", "2028-01-31"],
      ["AED 2", "2027-04-30"],
      ["AED 2", "2028-02-29"],
    ]);
  });

  it("is told by the lines of the sheet on which its forms start", () => {
    const text =
      "Check\nDevice:,AED 1\nPads expiry:,2027-03-31\nSite:,North\n\nDevice:,AED 2\nPads expiry:,2027-04-30\nSite:,South\n";
    const reading = read({ "checks.csv": text });
    expect(reading.fleet.datedStock.map(({ source }) => source.line)).toEqual([2, 3]);
    const [found] = reading.findings.filter(({ code }) => code === "told-as-list");
    expect(found!.message).toContain("line 2 starts in line 2 of the sheet and line 3 starts in line 6 of the sheet");
  });

  it("is a columns file's tab", () => {
    const parsed = parseColumnsFile(
      JSON.stringify({
        format: "wanecast.columns/1",
        tables: [
          {
            file: "register.csv",
            sheet: "turned",
            table: 1,
            rows: [{ kind: "dated_stock", item: "battery", columns: { place: "Device", expiry: "Battery expiry" } }],
            unread: ["Pads expiry"],
          },
        ],
      }),
    );
    if ("problem" in parsed) throw new Error(parsed.problem);
    const file = textFile("register.csv", TURNED);
    const { fleet } = readSheets([file], { asOf: AS_OF, dateOrder: null, columns: parsed.columns });
    expect(fleet.datedStock.map(({ place, expiry }) => [place, isoOrNull(expiry)])).toEqual([
      ["AED 1", "2028-01-31"],
      ["AED 2", "2028-02-29"],
    ]);
  });
});

describe("forms", () => {
  const datedIn = (text: string) =>
    read({ "form.csv": text }).fleet.datedStock.map(({ place, item, expiry }) => [place, item, isoOrNull(expiry)]);

  it("may hold each label and its value in one cell", () => {
    expect(datedIn("Device: AED 3\nAdult pads expiry: 2027-03-31\nAdult pads lot: L1\nSite: North\n")).toEqual([
      ["AED 3", "Adult pads", "2027-03-31"],
    ]);
  });

  it("may stand beside each other", () => {
    const text =
      "Device,AED 3,,Device,AED 4\nChild pads expiry,2027-03-31,,Child pads expiry,2027-05-31\nSite,North,,Site,South\nSerial,1,,Serial,2\n";
    expect(datedIn(text)).toEqual([
      ["AED 3", "Child pads", "2027-03-31"],
      ["AED 4", "Child pads", "2027-05-31"],
    ]);
  });

  it("may give the unit of a value in the next cell", () => {
    const text =
      "Battery serial,BT-1,,Test date,2026-02-03\nRuntime,212,min,Result,Pass\nSite,North,,Cycles,131\nDuty,ward,,Device,Monitor 1\n";
    const [test] = read({ "form.csv": text }).fleet.runtimeTests;
    expect(test).toMatchObject({ serial: "BT-1", minutes: 212, result: "pass" });
  });

  it("with few labels are known by their colons, and of one filled in again the last check of each place counts", () => {
    const form = (device: string, checked: string, expiry: string, lot: string) =>
      `Device:,${device},Check date:,${checked}\nAdult pads expiry:,${expiry},Adult pads lot:,${lot}\nStatus:,ok,Site:,North\nRemarks:,,,\n`;
    const { fleet, setAside } = read({
      "a.csv": form("AED 3", "2026-10-03", "2028-03-31", "L2"),
      "b.csv": form("AED 3", "2026-09-03", "2027-03-31", "L1"),
      "c.csv": form("AED 4", "2026-08-03", "2027-03-31", "L1"),
    });
    expect(fleet.datedStock.map(({ place, lot }) => [place, lot])).toEqual([
      ["AED 3", "L2"],
      ["AED 4", "L1"],
    ]);
    // the earlier form tells nothing that the later one does not
    expect(setAside.map(({ file, line }) => [file, line])).toEqual([["b.csv", 2]]);
    expect(fleet.devices.map(({ device }) => device)).toEqual(["AED 3", "AED 4"]);
  });

  it("with several values for a label are refused, and no line is lost", () => {
    const text =
      "Serial,BT-1,Device,AED 3\nTest date,2026-01-02,Result,pass\nCapacity,88,90,Site,North\nInstalled,2023-05-01,Cycles,120\n";
    const reading = read({ "form.csv": text });
    expect(reading.setAside.map(({ line, reason }) => [line, reason])).toEqual(
      [2, 3, 4].map((line) => [line, "unknown-table"]),
    );
  });
});

it("what stands below a label without one of its own is not lost in another layout: the sheet is refused", () => {
  for (const text of [
    "Device,AED 1,AED 2\nPads expiry,2027-03-31,2027-04-30\n,2027-09-30,2027-10-31\nBattery expiry,2028-01-31,2028-02-29\n",
    "Device:,AED 1,Check date:,2026-10-03\nPads expiry:,2027-03-31,Pads lot:,L1\n,2027-09-30,,L2\nBattery expiry:,2028-01-31,Site:,North\n",
  ]) {
    const { fleet, findings } = read({ "sheet.csv": text });
    expect(fleet.datedStock).toEqual([]);
    const told = findings.filter(({ severity }) => severity !== "info").map(({ code }) => code);
    expect(told.length).toBeGreaterThan(0);
  }
});

it("what a list says itself is not turned", () => {
  for (const text of [
    "Task,Interval,Item,Qty\nUser test,daily,Printer paper,0.1\nAnnual,once a year,Adult pads,1\n",
    "key,value\nhorizon_months,36\nend_of_life_percent,80\nservice_level,0.95\n",
    "Device,Pads expiry,Battery expiry\nAED 1,2027-03-31,2028-01-31\nAED 2,2027-04-30,2028-03-31\n",
  ])
    expect(read({ "list.csv": text }).findings.map(({ code }) => code)).not.toContain("told-as-list");
});
