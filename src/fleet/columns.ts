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

/** How a cell is read. */
export type CellType =
  | "text"
  | "date"
  | "number"
  | "whole"
  | "percent"
  | "share"
  | "yes-no"
  | "choice"
  | "list"
  | "money"
  | "breaks";

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
  /** Inclusive bounds of a number, in the column's unit. */
  min: number;
  max: number;
  month: MonthRule;
  /** A date after as-of is out of bounds. */
  notAfterAsOf: boolean;
  choices: readonly string[];
  /** Other header words that mean this column, lower case, words parted by one blank. */
  aliases: readonly string[];
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

type Rules = Partial<Omit<ColumnSpec, "name" | "field" | "type" | "aliases">>;

const EXPECTS: Record<CellType, string> = {
  text: "text",
  date: "a date such as 2027-04-03",
  number: "a number",
  whole: "a whole number",
  percent: "a percentage such as 87",
  share: "a share such as 0.95 or 95 %",
  "yes-no": "yes or no",
  choice: "one of the known words",
  list: "names parted by semicolons",
  money: "an amount such as 38.50",
  breaks: "breaks such as 10:38.50; 50:35.00",
};

const camel = (name: string) => name.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

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

function column(name: string, type: CellType, aliases = "", rules: Rules = {}): ColumnSpec {
  return {
    name,
    field: camel(name),
    type,
    unit: unitOf(name),
    required: false,
    measures: false,
    min: type === "percent" ? 5 : 0,
    max: type === "percent" ? 130 : type === "share" ? 1 : 1e9,
    month: "not-after-as-of",
    notAfterAsOf: false,
    choices: [],
    expects: rules.choices ? `one of ${rules.choices.join(", ")}` : EXPECTS[type],
    aliases: aliases === "" ? [] : aliases.split(", "),
    ...rules,
  };
}

const required = { required: true } as const;
const first = { month: "first" } as const;
const last = { month: "last" } as const;
const amount = { required: true, measures: true } as const;
const celsius = { min: -40, max: 85, expects: "degrees Celsius from -40 to 85" } as const;
const cycles = { max: 20_000, expects: "a whole number from 0 to 20,000" } as const;
const measure = { measures: true, min: 1e-9 } as const;

function sheet(
  kind: SheetKind,
  columns: ColumnSpec[],
  rules: Partial<Pick<SheetSpec, "key" | "keyMayLack" | "oneOf">> = {},
): SheetSpec {
  return { kind, list: camel(kind) as keyof Fleet, columns, key: [], keyMayLack: [], oneOf: [], ...rules };
}

/** Every canonical sheet with its columns, in the order in which clean sheets are written. */
export const SHEETS: readonly SheetSpec[] = [
  sheet(
    "devices",
    [
      column("device", "text", "device id, device name, asset, asset id, asset tag, asset no, unit", required),
      column("type", "text", "device type, model, model type, category, class"),
      column("site", "text", "location, station, base, department, ward, depot"),
      column("duty", "text", "role, use, service, assignment"),
      column("in_service", "date", "in service date, install date, installed, commissioned, start date", first),
      column("temperature_c", "number", "temperature, temp, temp c, ambient c", celsius),
      column("uses_per_year", "number", "uses a year, annual uses, uses year"),
      column("retired", "date", "retired on, retirement date, withdrawn, out of service"),
    ],
    { key: ["device"] },
  ),
  sheet(
    "packs",
    [
      column("serial", "text", "serial number, serial no, s n, sn, pack serial, battery serial", required),
      column("item", "text", "part, part number, part no, article, battery type, pack type"),
      column("device", "text", "device id, in device, fitted in, asset, asset id"),
      column("site", "text", "location, station, base, pool"),
      column(
        "made",
        "date",
        "made on, manufactured, manufacture date, production date, mfg date, date of manufacture",
        first,
      ),
      column("in_service", "date", "in service date, install date, installed, commissioned, start date", first),
      column("cycles", "whole", "cycle count, charge cycles, cycle", cycles),
      column("cycles_on", "date", "cycles read on, cycles date, cycle count date"),
      column("retired", "date", "retired on, retirement date, withdrawn, out of service"),
      column("retired_because", "choice", "retired reason, reason retired, retirement reason, reason", {
        choices: RETIRED_BECAUSE,
      }),
      column("temperature_c", "number", "temperature, temp, temp c, ambient c", celsius),
      column("held", "text", "hold, on hold, hold reason, quarantine, quarantined"),
    ],
    { key: ["serial"] },
  ),
  sheet(
    "runtime_tests",
    [
      column("serial", "text", "serial number, serial no, s n, sn, pack serial, battery serial", required),
      column("date", "date", "test date, tested, tested on, date tested, date of test", {
        ...amount,
        notAfterAsOf: true,
      }),
      column(
        "minutes",
        "number",
        "runtime, runtime minutes, runtime min, run time, duration, duration min, min",
        measure,
      ),
      column("wh", "number", "watt hours, energy, energy wh, capacity wh", measure),
      column("ah", "number", "amp hours, ampere hours, capacity ah", measure),
      column("percent", "percent", "capacity, capacity percent, capacity pct, pct, soh, health", {
        measures: true,
        expects: "a capacity from 5 to 130 % of rated",
      }),
      column("result", "choice", "outcome, pass fail, verdict", { choices: ["pass", "fail"] }),
      column("load_w", "number", "load, load watts, watts, power w"),
      column("temperature_c", "number", "temperature, temp, temp c, test temperature", celsius),
      column("cycles", "whole", "cycle count, charge cycles, cycle", cycles),
      column("full_charge", "yes-no", "fully charged, from full, from full charge"),
      column("at_least", "yes-no", "stopped early, minimum only, censored"),
    ],
    { key: ["serial", "date"], oneOf: ["minutes", "wh", "ah", "percent", "result"] },
  ),
  sheet(
    "dated_stock",
    [
      column("item", "text", "part, part number, part no, article, product, description, consumable", required),
      column(
        "expiry",
        "date",
        "expires, expiry date, expiration, expiration date, exp, exp date, use by, use by date",
        {
          ...amount,
          month: "last",
        },
      ),
      column("lot", "text", "lot number, lot no, batch, batch number, batch no"),
      column("serial", "text", "serial number, serial no, s n, sn"),
      column("quantity", "whole", "qty, count, units, number, pieces, pcs", { measures: true }),
      column("place", "text", "location, site, store, device, station, where, vehicle"),
      column("made", "date", "made on, manufactured, manufacture date, production date, mfg date", first),
      column("opened", "date", "opened on, date opened, open date", first),
      column("label", "text", "scan, barcode, label scan, udi"),
      column("held", "text", "hold, on hold, hold reason, quarantine, quarantined"),
    ],
    { key: ["serial"] },
  ),
  sheet(
    "catalogue",
    [
      column("item", "text", "part, part number, part no, article, product", required),
      column("kind", "choice", "item kind, category, class", { ...required, choices: ITEM_KINDS }),
      column("gtin", "text", "ean, gtin 14, trade item number"),
      column("chemistry", "text", "cell chemistry, battery chemistry"),
      column("supplier", "text", "vendor, supplied by, source"),
      column("price", "money", "unit price, cost, unit cost, list price"),
      column("price_per", "choice", "price unit, priced per", { choices: ["unit", "box"] }),
      column("currency", "text", "ccy, currency code"),
      column("units_per_box", "whole", "box size, per box, units box, box quantity, pieces per box", { min: 1 }),
      column("minimum_order", "whole", "minimum order quantity, min order, moq, minimum quantity"),
      column("price_breaks", "breaks", "breaks, quantity breaks, volume prices"),
      column("lead_days", "number", "lead time, lead time days, delivery days, lead", { max: 3650 }),
      column("lead_sd_days", "number", "lead time sd, lead sd, lead time spread days", { max: 3650 }),
      column("shelf_months", "number", "shelf life, shelf life months", { max: 600 }),
      column("arrives_with_months", "number", "remaining life on arrival, life on arrival months", { max: 600 }),
      column("service_months", "number", "service life, service life months, life in service months", { max: 600 }),
      column("max_cycles", "whole", "maximum cycles, cycle limit, rated cycles", cycles),
      column("rated_wh", "number", "rated watt hours, nominal wh, rated energy wh", measure),
      column("rated_ah", "number", "rated amp hours, nominal ah, rated capacity ah", measure),
      column("rated_minutes", "number", "rated runtime, nominal minutes, rated runtime minutes", measure),
      column("opened_days", "number", "days once opened, open life days, life once opened", { max: 36_500 }),
      column("unit_length_m", "number", "length m, roll length m, unit length, metres per roll"),
      column("per_device", "number", "units per device, needed per device, quantity per device", { max: 1000 }),
      column("fits", "list", "fits types, device types, for devices, compatible with"),
      column("carried_by", "list", "carried by duties, duties, for duties"),
      column("alternatives", "list", "alternative items, substitutes, equivalent items"),
      column("replaced_by", "text", "successor, superseded by, replacement item"),
      column("service_level", "share", "target service level", { expects: "a share between 0 and 1, such as 0.95" }),
    ],
    { key: ["item", "supplier"], keyMayLack: ["supplier"] },
  ),
  sheet("use_log", [
    column("date", "date", "used on, use date, date used, day", { ...amount, notAfterAsOf: true }),
    column("item", "text", "part, part number, part no, article, product, consumable", required),
    column("quantity", "whole", "qty, count, units, used, number, pieces, pcs", amount),
    column("place", "text", "location, site, store, device, station, where, vehicle"),
    column("reason", "choice", "why, use type, reason for use", { choices: USE_REASONS }),
  ]),
  sheet(
    "on_order",
    [
      column("item", "text", "part, part number, part no, article, product", required),
      column("quantity", "whole", "qty, ordered, quantity ordered, units, number, pieces, pcs", amount),
      column(
        "arrives",
        "date",
        "arrival, arrival date, due, due date, expected, expected date, eta, delivery date",
        last,
      ),
      column("supplier", "text", "vendor, supplied by, ordered from"),
      column("expiry", "date", "expires, expiry date, expiration date, use by", last),
      column("order", "text", "order number, order no, po, po number, purchase order"),
    ],
    { key: ["order", "item"] },
  ),
  sheet("routine", [
    column("task", "text", "routine, procedure, check, programme task", required),
    column("per_year", "number", "times per year, times a year, frequency, a year", { ...amount, max: 100_000 }),
    column("duty", "text", "role, service"),
    column("item", "text", "part, consumable, article"),
    column("quantity", "number", "qty, units, amount, units per task", { measures: true }),
    column("cycles", "number", "battery cycles, cycles per task, charge cycles", { max: 20_000 }),
  ]),
  sheet(
    "suppliers",
    [
      column("supplier", "text", "vendor, supplier name, vendor name", required),
      column("order_fee", "money", "fee, delivery fee, shipping, order cost, fee per order"),
      column("free_over", "money", "free delivery over, free shipping over, no fee over"),
      column("order_every_months", "whole", "order cadence months, months between orders", { min: 1, max: 120 }),
      column("currency", "text", "ccy, currency code"),
    ],
    { key: ["supplier"] },
  ),
  sheet(
    "policy",
    [
      column("key", "text", "setting, policy, parameter, option", required),
      column("value", "text", "setting value, chosen", required),
    ],
    { key: ["key"] },
  ),
];

/** The canonical sheet of a kind. */
export function sheetSpec(kind: SheetKind): SheetSpec {
  return SHEETS.find((spec) => spec.kind === kind) as SheetSpec;
}
