import { getHeapStatistics } from "node:v8";
import type { Reading } from "../src/index.ts";
import { note } from "./print.ts";

/** What the memory of a plan, or of proving forecasts, grows with. */
interface FleetSize {
  packs: number;
  /** Rows used, of all sheets. */
  rows: number;
  /** Months ahead; 0 where nothing is planned. */
  months: number;
}

/*
 * Bytes of Node's heap that a plan with all its files takes at its peak, a little more than measured: 10,000 packs over
 * 60 months plan within 400 MB and not within 280, over 12 months within 280 and not within 200; 25,000 over 60 months
 * within 1,200 MB and not within 800.
 */
const BYTES_PER_PACK = 20_000;
const BYTES_PER_PACK_AND_MONTH = 400;
const BYTES_PER_ROW = 500;
/** What is asked for beyond the estimate: memory that is short is cleared again and again, which takes long. */
const ROOM = 1.5;

const MEGABYTE = 1e6;
const GIGABYTE = 1e9;

/**
 * What to say before a fleet is planned that may need more memory than Node takes by itself: it would end in Node's own
 * words, after much work and with nothing written. Null where it should do.
 *
 * @param limitBytes  where Node stops
 */
export function memoryNote(
  { packs, rows, months }: FleetSize,
  limitBytes = getHeapStatistics().heap_size_limit,
): string | null {
  const needed = packs * (BYTES_PER_PACK + months * BYTES_PER_PACK_AND_MONTH) + rows * BYTES_PER_ROW;
  if (needed <= limitBytes) return null;
  const work = `${months > 0 ? "A plan" : "A forecast"} of ${packs.toLocaleString("en")} packs${months > 0 ? ` over ${months} months` : ""}`;
  return `${work} may need ${wayOut(needed, limitBytes)}.`;
}

/**
 * Says where the work on a fleet may need more memory than Node takes.
 *
 * @param months  how far it plans; 0 where nothing is planned
 */
export function warnOfMemory({ fleet, inputs }: Reading, months: number): void {
  const rows = inputs.reduce((sum, { used }) => sum + used, 0);
  const warning = memoryNote({ packs: fleet.packs.length, rows, months });
  if (warning !== null) note(warning);
}

/*
 * Bytes of Node's heap that reading takes for each byte of a sheet, a little more than measured with `check --json`:
 * 19 MB of CSV are read within 400 MB and not within 250, 3.7 MB within 100 and not within 60; a workbook, which is
 * packed, of 16.5 MB within 800 MB and not within 500.
 */
const READING_BYTES_PER_BYTE = 18;
const READING_BYTES_PER_PACKED_BYTE = 45;

/**
 * What to say before sheets are read that may need more memory than Node takes by itself; null where it should do.
 *
 * @param limitBytes  where Node stops
 */
export function readingNote(
  files: readonly { name: string; bytes: { length: number } }[],
  limitBytes = getHeapStatistics().heap_size_limit,
): string | null {
  let [needed, given] = [0, 0];
  for (const { name, bytes } of files) {
    given += bytes.length;
    needed += bytes.length * (/\.xls[xm]$/i.test(name) ? READING_BYTES_PER_PACKED_BYTE : READING_BYTES_PER_BYTE);
  }
  if (needed <= limitBytes) return null;
  return `Reading ${Math.round(given / MEGABYTE)} MB of sheets may need ${wayOut(needed, limitBytes)}, or hand in the sheets of some items at a time.`;
}

/** How much memory something may need, and what to do where it is more than Node takes. */
function wayOut(neededBytes: number, limitBytes: number): string {
  const gigabytes = (bytes: number) => (bytes / GIGABYTE).toFixed(1);
  const megabytes = 1000 * Math.ceil((ROOM * neededBytes) / GIGABYTE);
  return `some ${gigabytes(neededBytes)} GB of memory, and Node stops at ${gigabytes(limitBytes)} GB. If it does, run this again with NODE_OPTIONS=--max-old-space-size=${megabytes} set, on a machine that has as much`;
}
