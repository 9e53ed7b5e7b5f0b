import { isoFromDay } from "../../src/calendar/day.ts";
import { capacityOn, cyclesBy } from "./pack-model.ts";
import type { StoryPack } from "./packs.ts";
import { chance, normal, whole } from "./random.ts";
import type { Sheet, SheetRow } from "./sheet.ts";
import { AS_OF } from "./story.ts";

/** The bench fails a pack later than the planner wants it replaced. */
const FAILS_BELOW = 0.75;
/** Relative spread of one reading. */
const NOISE = 0.012;
const MONITOR_RATED_WH = 75;
const MONITOR_LOAD_W = 60;
const TRANSFER_RATED_MINUTES = 240;
/** Share of capacity that a pack shows on a bench at 5 degrees. */
const COLD_SHARE = 0.9;

/** A test about every half year; some of them did not happen. */
function testDays({ from, to }: StoryPack): number[] {
  const days: number[] = [];
  for (let on = from + whole(20, 60); on < Math.min(to, AS_OF); on += whole(148, 185)) {
    if (!chance(0.08)) days.push(on);
  }
  return days;
}

function testRow(pack: StoryPack, on: number): SheetRow {
  if (pack.ageing === null) return {};
  const measured = capacityOn(pack.ageing, on) * (1 + NOISE * normal());
  const row: SheetRow = {
    serial: pack.row.serial ?? null,
    date: isoFromDay(on),
    result: measured < FAILS_BELOW ? "fail" : "pass",
  };
  if (pack.row.item === "pack-pm") return { ...row, minutes: Math.round(measured * TRANSFER_RATED_MINUTES) };
  if (pack.row.item === "pack-aed-trainer") return { ...row, percent: Math.round(measured * 100) };
  const cold = chance(0.02);
  const minutes = ((measured * (cold ? COLD_SHARE : 1) * MONITOR_RATED_WH) / MONITOR_LOAD_W) * 60;
  const counted = chance(0.6) ? cyclesBy(pack.ageing, on) : null;
  const monitor = { ...row, minutes: Math.round(minutes), load_w: MONITOR_LOAD_W, cycles: counted };
  if (cold) return { ...monitor, temperature_c: 5 };
  if (chance(0.02)) return { ...monitor, minutes: 60, at_least: "yes", result: "pass" };
  return chance(0.015)
    ? { ...monitor, minutes: Math.round(minutes * 0.7), full_charge: "no", result: "pass" }
    : monitor;
}

/** Half of the packs of 2025 were never put on the bench. */
function neverTested({ row }: StoryPack): boolean {
  const serial = String(row.serial);
  return serial.startsWith("M25") && Number(serial.slice(4)) % 2 === 0;
}

/** runtime_tests.csv; one test was entered twice and one on a day that no year has. */
export function runtimeTestsSheet(packs: readonly StoryPack[]): Sheet {
  const rows = packs
    .filter((pack) => pack.ageing !== null && !neverTested(pack))
    .flatMap((pack) => testDays(pack).map((on) => testRow(pack, on)))
    .sort((a, b) => (String(a.date) < String(b.date) ? -1 : String(a.date) > String(b.date) ? 1 : 0));
  const twice = rows[310] as SheetRow;
  const impossible: SheetRow = {
    serial: "M22-009",
    date: "2025-06-31",
    minutes: 66,
    load_w: MONITOR_LOAD_W,
    result: "pass",
  };
  return {
    name: "runtime_tests.csv",
    columns: [
      "serial",
      "date",
      "minutes",
      "percent",
      "load_w",
      "temperature_c",
      "cycles",
      "full_charge",
      "at_least",
      "result",
    ],
    rows: [...rows.slice(0, 311), twice, ...rows.slice(311, 560), impossible, ...rows.slice(560)],
  };
}
