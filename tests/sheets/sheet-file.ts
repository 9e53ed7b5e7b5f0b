import { dayFromIso } from "../../src/calendar/day.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import type { Reading } from "../../src/sheets/reading.ts";

/** The as-of day of the sheet tests: 1 November 2026. */
export const AS_OF = dayFromIso("2026-11-01")!;

/** A file of UTF-8 text. */
export function textFile(name: string, text: string) {
  return { name, bytes: new TextEncoder().encode(text) };
}

/** Reads one or more sheets given as text, as of 1 November 2026. */
export function read(texts: string | Record<string, string>, dateOrder: "dmy" | "mdy" | "ymd" | null = null): Reading {
  const files = typeof texts === "string" ? { "sheet.csv": texts } : texts;
  return readSheets(
    Object.entries(files).map(([name, text]) => textFile(name, text)),
    { asOf: AS_OF, dateOrder },
  );
}
