import { inflateRawSync } from "node:zlib";
import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../../src/calendar/day.ts";
import { workbookDay, writeWorkbook } from "../../../src/out/workbook/write-workbook.ts";

/** A part of an archive as text, found by its name in the directory (APPNOTE 4.3.12) and unpacked. */
function partOf(archive: Uint8Array, name: string): string {
  const bytes = Buffer.from(archive);
  const entry = bytes.lastIndexOf(name) - 46;
  const from = bytes.readUInt32LE(entry + 42);
  const data = from + 30 + bytes.readUInt16LE(from + 26) + bytes.readUInt16LE(from + 28);
  return inflateRawSync(bytes.subarray(data, data + bytes.readUInt32LE(entry + 20))).toString();
}

describe("writeWorkbook", () => {
  it("is read by the library as it was written", async () => {
    const day = new Date(Date.UTC(2027, 1, 28));
    const counted = workbookDay(dayFromIso("2027-02-28")!);
    const keys = Array.from({ length: 28 }, (_, at) => `k${at}`);
    const bytes = await writeWorkbook([
      {
        name: "A & B",
        columns: [
          { header: "day", key: "day", numFmt: "yyyy-mm-dd" },
          { header: "price", key: "price", width: 12, numFmt: "#,##0.00" },
          { header: "serial", key: "serial" },
          { header: "held", key: "held" },
        ],
        data: [
          { day: counted, price: 38.5, serial: "000817", held: true },
          { day: null, price: -0.01, serial: ' <b>"x" & y</b>\nnew\u0001 line ', held: null },
        ],
      },
      { name: "Wide", columns: keys.map((key) => ({ header: key, key })), data: [{ k27: "in AB" }] },
    ]);
    const { sheets } = await readXlsx(bytes);
    expect(sheets.map(({ name }) => name)).toEqual(["A & B", "Wide"]);
    const [head, first, second] = sheets[0]!.rows;
    expect(head).toEqual(["day", "price", "serial", "held"]);
    expect(first![0]).toEqual(day);
    expect(first!.slice(1)).toEqual([38.5, "000817", true]);
    // XML 1.0 knows no control character of that kind.
    expect(second!.slice(0, 3)).toEqual([null, -0.01, ' <b>"x" & y</b>\nnew line ']);
    expect(sheets[1]!.rows[1]![27]).toBe("in AB");
  });

  // ECMA-376 part 1: 18.2.5 (a title row is a defined name; a quote in a tab's name is doubled), 18.3.1.63, 18.3.1.46
  it("lies across a printed page, as wide as it, with its header and footer on every page", async () => {
    const columns = [{ header: "reason", key: "reason", width: 60, wraps: true }];
    const reason = "One sentence. ".repeat(20);
    const bytes = await writeWorkbook([{ name: "O'Dee & Sons", columns, data: [{ reason }], footer: "As of <day>" }]);
    const { sheets } = await readXlsx(bytes, { readStyles: true });
    const [sheet] = sheets;
    expect(sheet!.pageSetup).toMatchObject({
      orientation: "landscape",
      fitToPage: true,
      fitToHeight: 0,
      printTitlesRow: "$1:$1",
    });
    expect(sheet!.headerFooter).toMatchObject({ oddFooter: "&LAs of <day>&C&A&R&P / &N" });
    expect(sheet!.cells!.get("1,0")!.style).toMatchObject({ alignment: { wrapText: true, vertical: "top" } });
    expect(sheet!.cells!.get("0,0")!.style).toMatchObject({ font: { bold: true } });
  });

  // seen in a program that leaves a row as high as the file says, and takes another font where a cell has none
  it("says how high and wide its cells are, and in which letters", async () => {
    const bytes = await writeWorkbook([
      {
        name: "Lines",
        columns: [
          { header: "day", key: "day", numFmt: "yyyy-mm-dd", width: 11 },
          { header: "code", key: "code", width: 24 },
          { header: "reason", key: "reason", width: 50, wraps: true },
          { header: "remark", key: "remark" },
        ],
        data: [
          { day: 46_000, code: "A-1", reason: "x".repeat(56), remark: null },
          { day: null, code: null, reason: "short", remark: "y".repeat(99) },
        ],
      },
    ]);
    const [sheet] = (await readXlsx(bytes, { readStyles: true })).sheets;
    // "code" and two digits' room; 56 letters are more than the 55 that a line of 50 digits takes
    expect(sheet!.columns!.map(({ width }) => width)).toEqual([11, 6, 50, 40]);
    // heights that a user has not set are not told by the library
    const heights = partOf(bytes, "xl/worksheets/sheet1.xml").match(/<row r="\d+" ht="\d+">/g);
    expect(heights).toEqual(['<row r="2" ht="30">', '<row r="3" ht="15">']);
    expect(partOf(bytes, "xl/styles.xml").match(/<font>.*?<\/font>/g)).toEqual([
      '<font><sz val="11"/><name val="Arial"/></font>',
      '<font><b/><sz val="11"/><name val="Arial"/></font>',
    ]);
    // a cell that names no style is given another font than one that names the first
    expect(partOf(bytes, "xl/worksheets/sheet1.xml")).not.toMatch(/<c r="[A-Z]+\d+"[ >](?!s=)/);
    expect(sheet!.cells!.get("1,0")!.style).toMatchObject({ alignment: { horizontal: "left", vertical: "top" } });
  });
});
