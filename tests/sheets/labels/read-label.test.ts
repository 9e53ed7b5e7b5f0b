import { describe, expect, it } from "vitest";
import { dayFromIso, isoFromDay } from "../../../src/calendar/day.ts";
import { gs1CheckDigit } from "../../../src/sheets/labels/gs1.ts";
import { hibcCheckCharacter } from "../../../src/sheets/labels/hibc.ts";
import { BadLabel } from "../../../src/sheets/labels/label.ts";
import { labelDay, labelYear } from "../../../src/sheets/labels/label-date.ts";
import { readLabel } from "../../../src/sheets/labels/read-label.ts";

const AS_OF = dayFromIso("2026-11-01")!;
const iso = (day: number | null) => (day === null ? null : isoFromDay(day));

function said(scan: string, asOf = AS_OF) {
  const label = readLabel(scan, asOf);
  if (label instanceof BadLabel) return label.because;
  return Object.fromEntries(
    Object.entries({ ...label, expiry: iso(label.expiry), made: iso(label.made) }).filter(
      ([, value]) => value !== null,
    ),
  );
}

describe("gs1CheckDigit", () => {
  // Source: GS1 "How to calculate a check digit manually"; leaflets of GS1 UK, GS1 India and GS1 Sweden.
  it.each([
    ["629104150021", 3],
    ["501234567890", 0],
    ["501234567421", 6],
    ["890400021003", 7],
    ["730001100001", 7],
    ["0950600013435", 2],
    ["9501234567890", 3],
    ["0950110153000", 3],
    ["9889876543210", 6],
    ["37610425002123456", 9],
  ])("of %s is %i", (digits, check) => {
    expect(gs1CheckDigit(digits)).toBe(check);
  });
});

describe("labelYear", () => {
  // Source: GS1 General Specifications, section 7.12 (49 years back, 50 ahead).
  it.each([
    [2026, 76, 2076],
    [2026, 77, 1977],
    [2026, 99, 1999],
    [2026, 0, 2000],
    [2026, 26, 2026],
    [2025, 75, 2075],
    [2025, 76, 1976],
    [2024, 74, 2074],
    [2024, 75, 1975],
    [2051, 0, 2100],
    [2051, 1, 2101],
    [2051, 2, 2002],
    [2000, 50, 2050],
    [2000, 51, 1951],
  ])("in %i reads %i as %i", (current, digits, year) => {
    expect(labelYear(digits, dayFromIso(`${current}-06-15`)!)).toBe(year);
  });
});

describe("labelDay", () => {
  // Source: GS1 General Specifications, AI 17: day 00 is the last day of the noted month, leap years included.
  it.each([
    ["130200", "2013-02-28"],
    ["160200", "2016-02-29"],
    ["240200", "2024-02-29"],
    ["260600", "2026-06-30"],
    ["270229", null],
    ["270230", null],
  ])("reads the use-by date %s as %s", (text, day) => {
    expect(iso(labelDay(text, AS_OF, "last"))).toBe(day);
  });

  it("reads 210300 and 210331 as one expiry", () => {
    expect(labelDay("210300", AS_OF, "last")).toBe(labelDay("210331", AS_OF, "last"));
  });
});

describe("readLabel: GS1", () => {
  // Source: element strings printed in public GS1 documents and examples; the last four are made by hand.
  it.each([
    ["]C10109506000134352", { product: "09506000134352" }],
    ["01950123456789031505030130215\u001d10ABC123", { product: "95012345678903", quantity: 215, lot: "ABC123" }],
    ["(01)09501101530003(17)250101(10)ABC123", { product: "09501101530003", expiry: "2025-01-01", lot: "ABC123" }],
    ["]C1010950110153000310ABC123<GS>17250101", { product: "09501101530003", expiry: "2025-01-01", lot: "ABC123" }],
    ["]C10100000012345678~3030~10b1~17220215", "has a wrong check digit in (01)"],
    [
      "0109506000134352172606001021A<GS>21X17",
      { product: "09506000134352", expiry: "2026-06-30", lot: "21A", serial: "X17" },
    ],
    ["010950600013435210LOT17<GS>17270131", { product: "09506000134352", lot: "LOT17", expiry: "2027-01-31" }],
    [`010950600013435210${"A".repeat(21)}`, "gives (10) 21 characters, where 1 to 20 are allowed"],
    ["0109506000134353", "has a wrong check digit in (01)"],
  ])("reads %j", (scan, expected) => {
    expect(said(scan)).toEqual(expected);
  });

  // 13 and 14 digits of one product, and a 13th digit that is wrong
  it("takes a bare GTIN for the product's number", () => {
    expect(said("9506000134352")).toEqual({ product: "09506000134352" });
    expect(said("09506000134352")).toEqual({ product: "09506000134352" });
    expect(said("9506000134353")).toBe("is neither GS1 nor HIBC");
  });

  it("tolerates a separator after a value of fixed length, and a leading one", () => {
    expect(said("]d2\u001d0109506000134352\u001d17270131\u001d10A")).toEqual({
      product: "09506000134352",
      expiry: "2027-01-31",
      lot: "A",
    });
  });

  it("refuses an impossible use-by date and an unknown identifier", () => {
    expect(said("(01)09506000134352(17)270229")).toBe("gives the use-by date 270229, which the calendar does not have");
    expect(said("01095060001343525512")).toBe('has no known identifier at "5512"');
    expect(said("]d1ABC")).toBe("is a plain symbol, neither GS1 nor HIBC");
  });

  // By the rule of the century, 77 read in 2026 is 1977: before the years that any sheet's dates may lie in.
  it("refuses a date outside 1990 to 2100, as a cell with it is refused", () => {
    expect(said("(01)09506000134352(17)770101")).toBe("gives a date outside 1990 to 2100");
    expect(said("(01)09506000134352(11)891231(17)270131")).toBe("gives a date outside 1990 to 2100");
  });
});

describe("hibcCheckCharacter", () => {
  // Source: ANSI/HIBC 2.6 Appendix B, Fig. 5 and section 2.2.1.1, PAS 1.3 section 2.2, and public test suites of parsers.
  it.each([
    ["+A123BJC5D6E71", "G"],
    ["+$$52001510X3G", "D"],
    ["+A99912345/$$52001510X3", "3"],
    ["+/EO523201", "3"],
    ["+A123BJC5D6E71/$$52001510X3", "C"],
    ["+A99912345/$$52001510X3/16D20111212/S77DEFG45", "7"],
    ["+$$0624J139276%", "5"],
    ["+$$02231162074Z", "A"],
  ])("of %s is %s", (data, check) => {
    expect(hibcCheckCharacter(data)).toBe(check);
  });
});

describe("readLabel: HIBC", () => {
  // Source: as above; 24060, 24366 and 23365 are days 60, 366 and 365 of their years.
  it.each([
    ["+A123BJC5D6E71G", { product: "A123BJC5D6E7" }],
    ["*+A123BJC5D6E71G*", { product: "A123BJC5D6E7" }],
    ["+$$52001510X3GD", { expiry: "2020-01-15", lot: "10X3" }],
    ["+A99912345/$$52001510X33", { product: "A9991234", expiry: "2020-01-15", lot: "10X3" }],
    [
      "+A99912345/$$52001510X3/16D20111212/S77DEFG457",
      { product: "A9991234", expiry: "2020-01-15", lot: "10X3", made: "2011-12-12", serial: "77DEFG45" },
    ],
    ["+$$0624J139276%5", { expiry: "2024-06-30", lot: "J139276" }],
    ["+$$02231162074ZA", { expiry: "2023-02-28", lot: "1162074" }],
    ["+A123BJC5D6E71H", "has a wrong check character"],
    // By hand: the values of +A99912345/$$3270600L3 add up to 253 = 5 x 43 + 38, and 38 is the blank.
    ["+A99912345/$$3270600L3_", { product: "A9991234", expiry: "2027-06-30", lot: "L3" }],
  ])("reads %j", (scan, expected) => {
    expect(said(scan)).toEqual(expected);
  });

  it.each([
    ["524060", "2024-02-29"],
    ["524366", "2024-12-31"],
    ["523365", "2023-12-31"],
    ["3270131", "2027-01-31"],
    ["2013127", "2027-01-31"],
    ["427013109", "2027-01-31"],
    ["62403109", "2024-01-31"],
    ["0227", "2027-02-28"],
  ])("reads the expiry format of $$%s as %s", (coded, expiry) => {
    const data = `+A99912345/$$${coded}L1`;
    expect(said(`${data}${hibcCheckCharacter(data)}`)).toEqual({ product: "A9991234", expiry, lot: "L1" });
  });

  it("reads quantities and serials of secondary parts", () => {
    const data = "+A99912345/$$+8243270131S9";
    expect(said(`${data}${hibcCheckCharacter(data)}`)).toEqual({
      product: "A9991234",
      quantity: 24,
      expiry: "2027-01-31",
      serial: "S9",
    });
  });
});
