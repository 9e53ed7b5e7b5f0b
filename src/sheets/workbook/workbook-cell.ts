import type { Cell as WorkbookCell } from "hucre/xlsx";
import type { Cell } from "../grid.ts";
import { meantText } from "../text/meant-text.ts";
import { formatMeaning } from "./number-format.ts";

const MS_PER_DAY = 86_400_000;
/** The spreadsheet's day 0 for lengths of time under sixty days, in both of its date systems. */
const DAY_ZERO = { "1900": Date.UTC(1899, 11, 31), "1904": Date.UTC(1904, 0, 1) } as const;
/** From serial 60 on the 1900 system is one day ahead, since it counts a 29 February 1900. */
const LEAP_ERROR_MS = Date.UTC(1900, 1, 28);

/** A workbook's cell as people see it: dates as ISO text, shares as percent, leading zeros and units kept. */
export function seenCell(
  value: WorkbookCell["value"] | undefined,
  cell: WorkbookCell | undefined,
  system: "1900" | "1904",
): Cell {
  if (value === null || value === undefined) return null;
  const format = cell?.style?.numFmt;
  if (value instanceof Date) return seenDate(value, format ?? "yyyy-mm-dd", system);
  if (typeof value === "string") return meantText(value);
  if (typeof value !== "number") return value;
  if (format === undefined) return value;
  const { digits, percent, unit } = formatMeaning(format);
  if (digits > 0 && Number.isInteger(value) && value >= 0) return String(value).padStart(digits, "0");
  if (percent) return `${Number((value * 100).toPrecision(12))} %`;
  return unit === "" ? value : `${value} ${unit}`;
}

/** A cell without a format of its own. */
export function plainCell(value: WorkbookCell["value"] | undefined, system: "1900" | "1904"): Cell {
  if (value instanceof Date) return seenDate(value, "yyyy-mm-dd", system);
  return typeof value === "string" ? meantText(value) : (value ?? null);
}

/** Dates repeat down a column, and writing one out is the dear part. */
const written = new Map<string, Map<number, Cell>>();
const MOST_WRITTEN = 50_000;

function seenDate(value: Date, format: string, system: "1900" | "1904"): Cell {
  const key = `${system}${format}`;
  let known = written.get(key);
  if (!known || known.size > MOST_WRITTEN) {
    known = new Map();
    written.set(key, known);
  }
  const ms = value.getTime();
  let cell = known.get(ms);
  if (cell === undefined) {
    cell = writeDate(value, format, system);
    known.set(ms, cell);
  }
  return cell;
}

function writeDate(value: Date, format: string, system: "1900" | "1904"): Cell {
  const ms = value.getTime();
  if (!Number.isFinite(ms)) return "#NUM!";
  const { time } = formatMeaning(format);
  if (time === "duration") return clockText(ms, system);
  const iso = value.toISOString();
  if (time === "month" && iso.slice(8, 10) === "01") return iso.slice(0, 7);
  const clock = iso.slice(11, 16);
  return clock === "00:00" ? iso.slice(0, 10) : `${iso.slice(0, 10)} ${clock}`;
}

function clockText(ms: number, system: "1900" | "1904"): string {
  const shift = system === "1900" && ms > LEAP_ERROR_MS ? MS_PER_DAY : 0;
  const seconds = Math.round((ms - DAY_ZERO[system] + shift) / 1000);
  const minutes = Math.floor(seconds / 60);
  const rest = seconds % 60;
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return rest === 0 ? clock : `${clock}:${String(rest).padStart(2, "0")}`;
}
