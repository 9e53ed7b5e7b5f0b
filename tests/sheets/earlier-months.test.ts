import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import type { Reading } from "../../src/sheets/reading.ts";
import { AS_OF, read } from "./sheet-file.ts";

const HEADER = ["AED", "Adult pads exp"];
const AUGUST = [
  ["E-1", "2026-09-30"],
  ["E-2", "2027-05-31"],
  ["E-3", "2027-06-30"],
];
// what had lapsed in E-1 was swapped
const OCTOBER = [["E-1", "2028-12-31"], ...AUGUST.slice(1)];
const csv = (rows: string[][]) => `${[HEADER, ...rows].map((row) => row.join()).join("\n")}\n`;
const stock = ({ fleet }: Reading) => fleet.datedStock.map(({ place, expiry }) => `${place} ${isoFromDay(expiry)}`);
const inOctober = OCTOBER.map((row) => row.join(" "));

describe("checks of each month in a sheet or tab of its own", () => {
  it("count as the last one found things, whatever the order of the files", () => {
    for (const [earlier, later] of [
      ["check 2026-08.csv", "check 2026-10.csv"],
      ["October.csv", "August.csv"].reverse() as [string, string],
      // without a year the last December before as-of, which is November 2026
      ["December.csv", "October.csv"],
    ]) {
      const reading = read({ [earlier!]: csv(AUGUST), [later!]: csv(OCTOBER) });
      expect(stock(reading)).toEqual(inOctober);
      expect(reading.findings.map(({ code, file }) => [code, file])).toContainEqual(["earlier-check", earlier]);
      expect(reading.fleet.devices.map(({ device }) => device)).toEqual(["E-1", "E-2", "E-3"]);
    }
  });

  it("count so in the tabs of a workbook, too", async () => {
    const tabs = { Aug: AUGUST, Sept: AUGUST, Oct: OCTOBER };
    const sheets = Object.entries(tabs).map(([name, rows]) => ({ name, rows: [HEADER, ...rows] }));
    const files = [{ name: "checks.xlsx", bytes: await writeXlsx({ sheets }) }];
    await openWorkbooks(files);
    expect(stock(readSheets(files, { asOf: AS_OF, dateOrder: null }))).toEqual(inOctober);
  });
});

describe("sheets that are no later check of the same", () => {
  const both = (texts: Record<string, string>) => stock(read(texts)).length;

  it("all count where most of their units differ, as of deliveries by month", () => {
    const other = OCTOBER.map(([place], at) => [place!, `2029-0${at + 1}-28`]);
    expect(both({ "Aug.csv": csv(AUGUST), "Oct.csv": csv(other) })).toBe(6);
  });

  it("all count where their names tell no month, or other things beside it", () => {
    expect(both({ "north.csv": csv(AUGUST), "south.csv": csv(OCTOBER) })).toBe(6);
    expect(both({ "north Aug.csv": csv(AUGUST), "south Oct.csv": csv(OCTOBER) })).toBe(6);
  });

  it("all count where they log uses: each month has its own", () => {
    const uses = "date,item,quantity\n2026-08-03,Adult pads,2\n";
    expect(read({ "use Aug.csv": uses, "use Oct.csv": uses }).fleet.useLog).toHaveLength(2);
  });
});
