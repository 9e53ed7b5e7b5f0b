import { writeXlsx } from "hucre/xlsx";
import { isoFromDay } from "../../src/calendar/day.ts";

const FIRST_DAY = 17_000;
const HEADER = ["serial", "date", "minutes", "percent", "load_w", "temperature_c", "cycles", "result"];

/** Runtime tests of many packs, ten a pack; no two rows have the same key. */
function testRow(index: number): (string | number)[] {
  const pack = Math.floor(index / 10);
  const test = index % 10;
  const day = isoFromDay(FIRST_DAY + test * 180 + (pack % 170));
  return [`P${String(pack).padStart(6, "0")}`, day, 70 - test, 95 - test, 60, 21, test * 40 + (pack % 30), "pass"];
}

/** A CSV sheet of runtime tests. */
export function bigCsv(rows: number): Uint8Array {
  const lines = Array.from({ length: rows }, (_, index) => testRow(index).join(","));
  return new TextEncoder().encode(`${HEADER.join(",")}\n${lines.join("\n")}\n`);
}

/** The same as a workbook of one tab. */
export async function bigWorkbook(rows: number): Promise<Uint8Array> {
  const body = Array.from({ length: rows }, (_, index) => testRow(index));
  return writeXlsx({ sheets: [{ name: "Tests", rows: [HEADER, ...body] }] });
}
