import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../../src/calendar/day.ts";
import { workbookDay, writeWorkbook } from "../../../src/out/workbook/write-workbook.ts";

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
});
