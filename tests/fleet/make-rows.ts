import { dayFromIso } from "../../src/calendar/day.ts";
import { blankCatalogueRow } from "../../src/fleet/blank-catalogue-row.ts";
import type {
  CatalogueRow,
  DatedStockRow,
  DeviceRow,
  OnOrderRow,
  PackRow,
  RoutineRow,
  RuntimeTestRow,
  UseLogRow,
} from "../../src/fleet/rows.ts";

/** Rows with every optional cell blank, for tests to fill in what they are about. */
const source = { file: "made-up.csv", sheet: null, line: 2 };

export function day(iso: string): number {
  const found = dayFromIso(iso);
  if (found === null) throw new Error(`${iso} is no day`);
  return found;
}

export function device(name: string, facts: Partial<DeviceRow> = {}): DeviceRow {
  const blank = { type: null, site: null, duty: null, inService: null, temperatureC: null, usesPerYear: null };
  return { device: name, ...blank, retired: null, source, ...facts };
}

export function pack(serial: string, facts: Partial<PackRow> = {}): PackRow {
  const blank = { item: null, device: null, site: null, made: null, inService: null, cycles: null, cyclesOn: null };
  return { serial, ...blank, retired: null, retiredBecause: null, temperatureC: null, held: null, source, ...facts };
}

export function stock(item: string, expiry: string, place: string | null, facts: Partial<DatedStockRow> = {}) {
  const blank = { lot: null, serial: null, quantity: 1, made: null, opened: null, label: null, held: null };
  return { item, expiry: day(expiry), place, ...blank, source, ...facts } satisfies DatedStockRow;
}

export function catalogued(item: string, kind: CatalogueRow["kind"], facts: Partial<CatalogueRow> = {}): CatalogueRow {
  return { ...blankCatalogueRow(item), kind, source, ...facts };
}

export function use(date: string, item: string, place: string | null, facts: Partial<UseLogRow> = {}): UseLogRow {
  return { date: day(date), item, quantity: 1, place, reason: "use", source, ...facts };
}

export function routine(task: string, perYear: number, facts: Partial<RoutineRow> = {}): RoutineRow {
  return { task, perYear, duty: null, item: null, quantity: null, cycles: null, source, ...facts };
}

export function ordered(item: string, quantity: number, facts: Partial<OnOrderRow> = {}): OnOrderRow {
  return { item, quantity, arrives: null, supplier: null, expiry: null, order: null, source, ...facts };
}

export function runtimeTest(serial: string, date: number, facts: Partial<RuntimeTestRow> = {}): RuntimeTestRow {
  const blank = { minutes: null, wh: null, ah: null, percent: null, result: null, loadW: null, temperatureC: null };
  return { serial, date, ...blank, cycles: null, fullCharge: null, atLeast: null, source, ...facts };
}
