import { camelCase } from "./camel-case.ts";
import { type CellType, expectedOf, NO_BOUND } from "./expected-cell.ts";
import { type Fleet, ITEM_KINDS, RETIRED_BECAUSE, USE_REASONS } from "./rows.ts";

/** The kinds of sheet, by the name that people see. */
export type SheetKind =
  | "devices"
  | "packs"
  | "runtime_tests"
  | "dated_stock"
  | "catalogue"
  | "use_log"
  | "on_order"
  | "routine"
  | "suppliers"
  | "policy";

/** The unit in which a number is kept; other units of its kind are converted on reading. */
export type Unit = "min" | "Wh" | "Ah" | "W" | "°C" | "days" | "months" | "m" | "units" | "per year" | null;

/** What a month without a day stands for: its first day, its last, or its last but not after as-of. */
export type MonthRule = "first" | "last" | "not-after-as-of";

/** One column of a canonical sheet. */
export interface ColumnSpec {
  /** The name in lower snake case, as people see it. */
  name: string;
  /** The field of the row in src/fleet/rows.ts. */
  field: string;
  type: CellType;
  unit: Unit;
  /** A row without it is set aside. */
  required: boolean;
  /** A value out of bounds sets the row aside; elsewhere it only empties the cell. */
  measures: boolean;
  /** A test that measures less than `min`, though no less than nothing, failed. */
  failsBelow: boolean;
  /** A place in whose stead a word may say that the thing is gone. */
  tellsGone: boolean;
  /** Which whole number stands for one between two: days, months and units a device are planned in whole. */
  rounds: "up" | "down" | null;
  /** Inclusive bounds of a number, in the column's unit. */
  min: number;
  max: number;
  month: MonthRule;
  /** A date after as-of is out of bounds. */
  notAfterAsOf: boolean;
  choices: readonly string[];
  /** What a well-formed value looks like, to end the words "was expected". */
  expects: string;
}

/** One canonical sheet. */
export interface SheetSpec {
  kind: SheetKind;
  list: keyof Fleet;
  columns: readonly ColumnSpec[];
  /** Fields under which rows are the same thing; a row with an empty one of `keyed` has no key. */
  key: readonly string[];
  /** Key fields that may be empty without the row losing its key. */
  keyMayLack: readonly string[];
  /** At least one of these fields must hold a value. */
  oneOf: readonly string[];
}

type Rules = Partial<Omit<ColumnSpec, "name" | "field" | "type">>;

function unitOf(name: string): Unit {
  if (/(^|_)minutes$/.test(name)) return "min";
  if (/(^|_)wh$/.test(name)) return "Wh";
  if (/(^|_)ah$/.test(name)) return "Ah";
  if (name.endsWith("_w")) return "W";
  if (name.endsWith("_c")) return "°C";
  if (name.endsWith("_days")) return "days";
  if (name.endsWith("_months")) return "months";
  if (name.endsWith("_m")) return "m";
  if (name.endsWith("per_year")) return "per year";
  return /quantity|units|minimum_order|per_device/.test(name) ? "units" : null;
}

function column(name: string, type: CellType, rules: Rules = {}): ColumnSpec {
  const min = rules.min ?? (type === "percent" ? 5 : 0);
  const max = rules.max ?? (type === "percent" ? 130 : type === "share" ? 1 : NO_BOUND);
  return {
    name,
    field: camelCase(name),
    type,
    unit: unitOf(name),
    required: false,
    measures: false,
    failsBelow: false,
    tellsGone: false,
    rounds: null,
    min,
    max,
    month: "not-after-as-of",
    notAfterAsOf: false,
    choices: [],
    expects: rules.choices ? `one of ${rules.choices.join(", ")}` : expectedOf(type, min, max),
    ...rules,
  };
}

const whereItIs = { tellsGone: true } as const;
const required = { required: true } as const;
const first = { month: "first" } as const;
const last = { month: "last" } as const;
const amount = { required: true, measures: true } as const;
// More units than this in one row are another number in the wrong column, such as a serial or a GTIN.
const units = { measures: true, max: 1_000_000, expects: "a whole number of units up to 1,000,000" } as const;
const unitsAtOnce = { measures: true, max: 10_000, expects: "a whole number of units up to 10,000" } as const;
const celsius = { min: -40, max: 85, expects: "degrees Celsius from -40 to 85" } as const;
const cycles = { max: 20_000 } as const;
const rating = { measures: true, min: 1e-9 } as const;
const measure = { ...rating, failsBelow: true } as const;
// the safe way: an order takes longer, a life is shorter
const wait = { max: 3650, rounds: "up" } as const;
const life = { max: 600, rounds: "down" } as const;

function sheet(
  kind: SheetKind,
  columns: ColumnSpec[],
  rules: Partial<Pick<SheetSpec, "key" | "keyMayLack" | "oneOf">> = {},
): SheetSpec {
  return { kind, list: camelCase(kind) as keyof Fleet, columns, key: [], keyMayLack: [], oneOf: [], ...rules };
}

/** Every canonical sheet with its columns, in the order in which clean sheets are written. */
export const SHEETS: readonly SheetSpec[] = [
  sheet(
    "devices",
    [
      column("device", "text", required),
      column("type", "text"),
      column("site", "text", whereItIs),
      column("duty", "text"),
      column("in_service", "date", first),
      column("temperature_c", "number", celsius),
      column("uses_per_year", "number"),
      column("retired", "date"),
    ],
    { key: ["device"] },
  ),
  sheet(
    "packs",
    [
      column("serial", "text", required),
      column("item", "text"),
      column("device", "text", whereItIs),
      column("site", "text", whereItIs),
      column("made", "date", first),
      column("in_service", "date", first),
      column("cycles", "whole", cycles),
      column("cycles_on", "date"),
      column("retired", "date"),
      column("retired_because", "choice", {
        choices: RETIRED_BECAUSE,
      }),
      column("temperature_c", "number", celsius),
      column("held", "text"),
    ],
    { key: ["serial"] },
  ),
  sheet(
    "runtime_tests",
    [
      column("serial", "text", required),
      column("date", "date", { ...amount, notAfterAsOf: true }),
      column("minutes", "number", measure),
      column("wh", "number", measure),
      column("ah", "number", measure),
      column("percent", "percent", { ...measure, min: 5, expects: "a capacity from 5 to 130 % of rated" }),
      column("result", "choice", { choices: ["pass", "fail"] }),
      column("load_w", "number"),
      column("temperature_c", "number", celsius),
      column("cycles", "whole", cycles),
      column("full_charge", "yes-no"),
      column("at_least", "yes-no"),
    ],
    { key: ["serial", "date"], oneOf: ["minutes", "wh", "ah", "percent", "result"] },
  ),
  sheet(
    "dated_stock",
    [
      column("item", "text", required),
      column("expiry", "date", {
        ...amount,
        month: "last",
      }),
      column("lot", "text"),
      column("serial", "text"),
      column("quantity", "whole", units),
      column("place", "text", whereItIs),
      column("made", "date", first),
      column("opened", "date", first),
      column("label", "text"),
      column("held", "text"),
    ],
    { key: ["serial"] },
  ),
  sheet(
    "catalogue",
    [
      column("item", "text", required),
      column("kind", "choice", { ...required, choices: ITEM_KINDS }),
      column("gtin", "text"),
      column("chemistry", "text"),
      column("supplier", "text"),
      column("price", "money"),
      column("price_per", "choice", { choices: ["unit", "box"] }),
      column("currency", "text"),
      column("units_per_box", "whole", { min: 1 }),
      column("minimum_order", "whole"),
      column("price_breaks", "breaks"),
      column("lead_days", "number", wait),
      column("lead_sd_days", "number", { max: 3650 }),
      column("shelf_months", "number", life),
      column("arrives_with_months", "number", life),
      column("service_months", "number", life),
      column("max_cycles", "whole", cycles),
      column("rated_wh", "number", rating),
      column("rated_ah", "number", rating),
      column("rated_minutes", "number", rating),
      column("opened_days", "number", { ...life, max: 36_500 }),
      // a roll without length would be used up at once, for ever
      column("unit_length_m", "number", { min: 1, max: 1000 }),
      column("per_device", "number", { max: 1000, rounds: "up" }),
      column("fits", "list"),
      column("carried_by", "list"),
      column("alternatives", "list"),
      column("replaced_by", "text"),
      // no stock is sure to be enough, and none at all is no level
      column("service_level", "share", { min: 1e-6, max: 1 - 1e-6, expects: "a share between 0 and 1, such as 0.95" }),
    ],
    { key: ["item", "supplier"], keyMayLack: ["supplier"] },
  ),
  sheet("use_log", [
    column("date", "date", { ...amount, notAfterAsOf: true }),
    column("item", "text", required),
    column("quantity", "whole", { ...required, ...unitsAtOnce }),
    column("place", "text"),
    column("reason", "choice", { choices: USE_REASONS }),
  ]),
  sheet(
    "on_order",
    [
      column("item", "text", required),
      column("quantity", "whole", { ...required, ...units }),
      column("arrives", "date", last),
      column("supplier", "text"),
      column("expiry", "date", last),
      column("order", "text"),
    ],
    { key: ["order", "item"] },
  ),
  sheet("routine", [
    column("task", "text", required),
    // once an hour is 8,766
    column("per_year", "number", { ...amount, max: 10_000 }),
    column("duty", "text"),
    column("item", "text"),
    column("quantity", "number", { ...unitsAtOnce, max: 1000, expects: "a number of units up to 1,000" }),
    column("cycles", "number", { max: 20_000 }),
  ]),
  sheet(
    "suppliers",
    [
      column("supplier", "text", required),
      column("order_fee", "money"),
      column("free_over", "money"),
      column("order_every_months", "whole", { min: 1, max: 120 }),
      column("currency", "text"),
    ],
    { key: ["supplier"] },
  ),
  sheet("policy", [column("key", "text", required), column("value", "text", required)], { key: ["key"] }),
];

/** The canonical sheet of a kind. */
export function sheetSpec(kind: SheetKind): SheetSpec {
  return SHEETS.find((spec) => spec.kind === kind) as SheetSpec;
}

/** The column of a sheet that fills a field, which must be one of its rows'. */
export function columnOfField({ columns }: SheetSpec, field: string): ColumnSpec {
  return columns.find((column) => column.field === field) as ColumnSpec;
}
