import type { SheetKind } from "../../fleet/columns.ts";
import { DATED_THINGS } from "./vocabulary.ts";

/**
 * Points of a header that names its column by the vocabulary, and of one that is the canonical name itself, less where its
 * cells speak against it: "Device" over what things are, beside their serials.
 */
export const POINTS = { byWords: 6, canonical: 10, odd: 5.5 } as const;

/**
 * Which words mean which column: for each sheet and column, sets of concepts parted by commas, a weaker one
 * with its points after a colon. `dated` stands for any one of DATED_THINGS.
 */
const SERIAL = "battery serial, serial, battery id, battery:5, battery name:5, id:3";
const MEANINGS: Record<SheetKind, Record<string, string>> = {
  devices: {
    device:
      "device id, device serial, device name, device, device unit, id unit:5, serial unit, name unit:5, id:4, serial:4, name:4, unit:4, id name:4, device place:4",
    type: "type, device type, type unit, category unit:4, device item:4, category:4, category device:4, device:3.5, item:2.5",
    site: "site, device site, place, device place, id site:4, id place:4, place site, name site, site unit, id unit:4, name unit:4, unit:3.5",
    duty: "duty, device duty, duty type, category duty",
    in_service: "install, device install, install unit",
    temperature_c: "temperature, site temperature, device temperature",
    uses_per_year: "peryear uses, uses, device peryear uses, device uses",
    retired: "retired, device retired, status:3, device status:3",
  },
  packs: {
    serial: SERIAL,
    item: "item, battery item, battery type, type:5, id item, battery id item, item type, battery item type, category:3, battery category:4, battery id:3.5",
    device:
      "device, device id, device serial, device name, battery device, device install:4, device place:4, holder, device holder, battery holder, fits:4, unit:4, device unit, id unit",
    site: "site, battery site, place:5.5, battery place, device site:5, place site, id site:5, id place:5, site unit, unit:3.5",
    made: "made, battery made",
    in_service: "install, battery install, battery date:4, date:2.6",
    cycles: "cycles, battery cycles",
    cycles_on: "asof cycles, cycles date, asof:4, battery cycles date, asof date:4",
    retired: "retired, battery retired",
    retired_because: "reason retired, reason:5, battery reason retired",
    temperature_c: "temperature, battery temperature",
    held: "held, battery held, status:3, battery status:3",
  },
  runtime_tests: {
    serial: `${SERIAL}, device:4, device id:4, device name:4, device serial:4, device unit:4, id unit:4, unit:4`,
    date: "date test, date:5, test:5, battery date test:6.5, capacity test:6.2, minutes test:6.2, battery test:6.2, capacity date test, date minutes test, asof:4, asof date:4",
    minutes: "minutes, minutes test, load minutes, battery minutes, capacity minutes, minutes result",
    wh: "wh, capacity wh, test wh, battery wh, result wh, battery capacity wh",
    ah: "ah, capacity ah, ah test, ah battery, ah result, ah battery capacity",
    percent: "capacity, capacity test, battery capacity, capacity result, battery:0",
    result: "result, result test, battery result",
    load_w: "load, load test",
    temperature_c: "temperature, temperature test",
    cycles: "cycles, battery cycles, cycles test",
    full_charge: "fullcharge, fullcharge test, battery fullcharge",
    at_least: "atleast, atleast test",
  },
  dated_stock: {
    item: "item, id item, item type, dated item, dated type, dated:4, name:4, type:3, dated name, dated id item, category item, category dated, dated id:5, category:2.5, id:2.5, contents:4",
    expiry:
      "expiry, dated expiry, dated expiry place, expiry item, dated date:4, dated arrives:4, dated:3.5, expiry lot:4, dated expiry lot:4",
    lot: "lot, dated lot, item lot",
    serial: "serial, dated serial, item serial",
    quantity: "quantity, dated quantity, item quantity, id:3, name:3",
    place:
      "place, site, device, device id, device name, device serial, device site:5, id place, id site, device place, place site, dated place, dated site, holder, dated holder, unit, device unit, id unit, name place, name site, place unit, site unit",
    made: "made, dated made, item made",
    opened: "opened, dated opened, item opened",
    label: "label, dated label, item label, id label",
    held: "held, dated held, item held, status:3, dated status:3, item status:3",
  },
  catalogue: {
    item: "item, id item, name:4, id:3",
    kind: "type:5, item type, category, category item",
    gtin: "gtin, gtin item",
    chemistry: "chemistry, battery chemistry",
    supplier: "supplier, item supplier",
    price:
      "price, item price, price unit, box price, item price unit, priceper:4, priceper quantity:4, price quantity, price priceper, device priceper, device price, box priceper:4",
    price_per: "priceper, priceper quantity, unit:4, item unit:4, item priceper",
    currency: "currency, currency price",
    units_per_box: "box, item box, contents",
    minimum_order: "minorder, minorder quantity, least quantity, least order, least order quantity, least:4",
    price_breaks: "breaks",
    lead_days: "lead, lead supplier, arrives lead",
    lead_sd_days: "lead sd",
    shelf_months: "shelf",
    arrives_with_months: "arriveswith",
    service_months: "servicelife",
    max_cycles: "maxcycles",
    rated_wh: "rated wh, capacity rated wh, wh:4, capacity wh:4",
    rated_ah: "ah rated, ah capacity rated, ah:4, ah capacity:4",
    rated_minutes: "minutes rated, minutes:4, capacity minutes rated",
    opened_days: "openlife",
    unit_length_m: "length",
    per_device: "perdevice",
    fits: "fits, device fits, device type:4, fits type, device:3",
    carried_by: "carriedby, duty:4, duty fits",
    alternatives: "alternatives",
    replaced_by: "replacedby",
    service_level: "servicelevel",
  },
  use_log: {
    date: "date, date uses, item date, install:4, date quantity:4",
    item: "item, id item, name:4, dated:4, item quantity:3.5",
    quantity: "quantity, item quantity, uses:4, id:3",
    place:
      "place, site, device, device id, device name, device site:5, id place, id site, place site, unit, device unit, holder, device holder, name place, name site, device serial:5",
    reason: "reason, reason uses, install reason, type:3, type uses, category:3",
  },
  on_order: {
    item: "item, id item, name:4, item order, dated:4",
    quantity:
      "outstanding:7, outstanding quantity:7, order outstanding:7, quantity, order quantity, item quantity, order:0",
    arrives: "arrives, arrives order",
    supplier: "supplier",
    expiry: "expiry, expiry item",
    order: "order, order status:5, id:3",
  },
  routine: {
    task: "task, name:4, task type, test:4, name test, test type",
    per_year: "peryear, peryear task, peryear uses, cadence",
    duty: "duty, duty task",
    item: "item, id item, dated:4",
    quantity: "quantity, item quantity, quantity task, quantity test, aside quantity",
    cycles: "cycles, battery cycles, cycles task",
  },
  suppliers: {
    supplier: "supplier, name:4, id supplier",
    order_fee: "fee, fee order, fee price, fee order price, order price:4",
    free_over: "freeover",
    order_every_months: "cadence",
    currency: "currency",
  },
  policy: { key: "key, name:4", value: "value" },
};

/** Points by a header's concepts (things and attributes, sorted) for one column. */
export type Points = ReadonlyMap<string, number>;

const sortWords = (words: string) => words.split(" ").sort().join(" ");

function pointsOf(patterns: string): Points {
  const points = new Map<string, number>();
  for (const pattern of patterns.split(", ")) {
    const [words, worth] = pattern.split(":") as [string, string?];
    const things = words.split(" ").includes("dated") ? DATED_THINGS : ["dated"];
    for (const thing of things)
      points.set(sortWords(words.replace("dated", thing)), worth === undefined ? POINTS.byWords : Number(worth));
  }
  return points;
}

/** For each sheet, the points of each column by a header's concepts. */
export const HEADER_POINTS: Record<SheetKind, Record<string, Points>> = Object.fromEntries(
  Object.entries(MEANINGS).map(([kind, columns]) => [
    kind,
    Object.fromEntries(Object.entries(columns).map(([name, patterns]) => [name, pointsOf(patterns)])),
  ]),
) as Record<SheetKind, Record<string, Points>>;
