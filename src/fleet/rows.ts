import type { Day } from "../calendar/day.ts";

/** Where a row came from: a file's own name, its tab (null for text files) and the line a spreadsheet shows. */
export interface Source {
  file: string;
  sheet: string | null;
  line: number;
}

/** Kinds of item that a catalogue knows. `pack` recharges; `primary` does not. */
export const ITEM_KINDS = ["pack", "primary", "pads", "gel", "paper", "sensor", "other"] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

/** Why a pack left service. */
export const RETIRED_BECAUSE = ["faded", "failed", "damaged", "lost", "policy", "recalled"] as const;
export type RetiredBecause = (typeof RETIRED_BECAUSE)[number];

/** Why an item was consumed; a blank cell is `use`. */
export const USE_REASONS = ["use", "routine", "lapsed", "restock"] as const;
export type UseReason = (typeof USE_REASONS)[number];

/** One device of the fleet. `type` is the user's own word for its kind. */
export interface DeviceRow {
  device: string;
  type: string | null;
  site: string | null;
  duty: string | null;
  inService: Day | null;
  temperatureC: number | null;
  usesPerYear: number | null;
  retired: Day | null;
  source: Source;
}

/** One battery pack. `cycles` were counted on `cyclesOn` (as-of where blank). */
export interface PackRow {
  serial: string;
  item: string | null;
  device: string | null;
  site: string | null;
  made: Day | null;
  inService: Day | null;
  cycles: number | null;
  cyclesOn: Day | null;
  retired: Day | null;
  retiredBecause: RetiredBecause | null;
  temperatureC: number | null;
  /** A reason why the pack may not be used, or null. */
  held: string | null;
  source: Source;
}

/** One capacity measurement. At least one of minutes, wh, ah, percent, result is there. */
export interface RuntimeTestRow {
  serial: string;
  date: Day;
  minutes: number | null;
  wh: number | null;
  ah: number | null;
  /** Percent of rated capacity, 87 for 87 %. */
  percent: number | null;
  result: "pass" | "fail" | null;
  loadW: number | null;
  temperatureC: number | null;
  cycles: number | null;
  /** null = not said, read as yes. */
  fullCharge: boolean | null;
  /** true = stopped early: the capacity is at least what was measured. */
  atLeast: boolean | null;
  source: Source;
}

/** One or more units of an item with one expiry at one place. */
export interface DatedStockRow {
  item: string;
  expiry: Day;
  lot: string | null;
  serial: string | null;
  /** Units, whole, >= 0. */
  quantity: number;
  /** A device, a site or a store. */
  place: string | null;
  made: Day | null;
  opened: Day | null;
  label: string | null;
  held: string | null;
  source: Source;
}

/** All-units price break: from `from` units on, every unit costs `price` (decimal text, major units). */
export interface PriceBreak {
  from: number;
  price: string;
}

/** One item as one supplier sells it. Money is decimal text in major units, as written. */
export interface CatalogueRow {
  item: string;
  kind: ItemKind;
  gtin: string | null;
  chemistry: string | null;
  supplier: string | null;
  price: string | null;
  pricePer: "unit" | "box" | null;
  currency: string | null;
  unitsPerBox: number | null;
  /** Units. */
  minimumOrder: number | null;
  /** Units. */
  priceBreaks: PriceBreak[];
  leadDays: number | null;
  leadSdDays: number | null;
  shelfMonths: number | null;
  arrivesWithMonths: number | null;
  serviceMonths: number | null;
  maxCycles: number | null;
  ratedWh: number | null;
  ratedAh: number | null;
  ratedMinutes: number | null;
  openedDays: number | null;
  unitLengthM: number | null;
  perDevice: number | null;
  /** Device types. */
  fits: string[];
  /** Duties. */
  carriedBy: string[];
  /** Items that serve as well. */
  alternatives: string[];
  replacedBy: string | null;
  /** 0 to 1. */
  serviceLevel: number | null;
  source: Source;
}

export interface UseLogRow {
  date: Day;
  item: string;
  quantity: number;
  place: string | null;
  reason: UseReason;
  source: Source;
}

export interface OnOrderRow {
  item: string;
  quantity: number;
  arrives: Day | null;
  supplier: string | null;
  expiry: Day | null;
  order: string | null;
  source: Source;
}

export interface RoutineRow {
  task: string;
  perYear: number;
  duty: string | null;
  item: string | null;
  /** Units a task; fractions allowed. */
  quantity: number | null;
  /** Battery cycles a task. */
  cycles: number | null;
  source: Source;
}

export interface SupplierRow {
  supplier: string;
  /** Decimal text, major units. */
  orderFee: string | null;
  freeOver: string | null;
  orderEveryMonths: number | null;
  currency: string | null;
  source: Source;
}

export interface PolicyRow {
  key: string;
  value: string;
  source: Source;
}

/** Everything that was read, one list a sheet kind. Validated at the border: inside, trust the types. */
export interface Fleet {
  devices: DeviceRow[];
  packs: PackRow[];
  runtimeTests: RuntimeTestRow[];
  datedStock: DatedStockRow[];
  catalogue: CatalogueRow[];
  useLog: UseLogRow[];
  onOrder: OnOrderRow[];
  routine: RoutineRow[];
  suppliers: SupplierRow[];
  policy: PolicyRow[];
}

/** A fleet of no rows. */
export function emptyFleet(): Fleet {
  return {
    devices: [],
    packs: [],
    runtimeTests: [],
    datedStock: [],
    catalogue: [],
    useLog: [],
    onOrder: [],
    routine: [],
    suppliers: [],
    policy: [],
  };
}
