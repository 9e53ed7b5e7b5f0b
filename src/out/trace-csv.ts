import { type Day, isoFromDay, isoOrNull } from "../calendar/day.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Mention } from "../supplies/mentions.ts";
import type { Trace } from "../supplies/traced.ts";
import { type CsvCell, csvText } from "./csv.ts";

const HEADER = [
  "what",
  "place",
  "device",
  "item",
  "lot",
  "serial",
  "quantity",
  "expiry",
  "swap_by",
  "held",
  "order",
  "arrives",
  "file",
  "line",
  "sheet",
] as const;

type TraceLine = Partial<Record<(typeof HEADER)[number], CsvCell>>;

/**
 * trace.csv: one line a row of the sheets that is touched, as a list to walk round with: stock, packs, open orders,
 * and last the lines to look into. New columns go to the end.
 */
export function traceCsv({ stock, packs, orders, places }: Trace, mentions: readonly Mention[], asOf: Day): string {
  const devices = new Set(places.flatMap(({ place, device }) => (device ? [nameKey(place)] : [])));
  const lines = [
    ...stock.map((row) => stockLine(row, devices)),
    ...packs.map((pack) => packLine(pack, asOf)),
    ...orders.map(orderLine),
    ...mentions.map(mentionLine),
  ];
  return csvText(
    HEADER,
    lines.map((line) => HEADER.map((name) => line[name] ?? null)),
  );
}

/** @param devices  keys of places that are devices, also of those that have left service */
function stockLine({ row, installed, swapBy }: Trace["stock"][number], devices: ReadonlySet<string>): TraceLine {
  const { place, item, lot, serial, quantity, expiry, held, source } = row;
  const dates = { expiry: isoFromDay(expiry), swap_by: isoFromDay(swapBy) };
  const { file, line, sheet } = source;
  return {
    what: "dated stock",
    place,
    device: yesNo(installed || devices.has(nameKey(place ?? ""))),
    item,
    lot,
    serial,
    quantity,
    ...dates,
    held,
    file,
    line,
    sheet,
  };
}

function packLine({ device, site, item, serial, retired, held, source }: Trace["packs"][number], asOf: Day): TraceLine {
  const what = retired === null || retired > asOf ? "pack" : "retired pack";
  const { file, line, sheet } = source;
  return {
    what,
    place: device ?? site,
    device: yesNo(device !== null),
    item,
    serial,
    quantity: 1,
    held,
    file,
    line,
    sheet,
  };
}

function orderLine({ item, quantity, order, arrives, source }: Trace["orders"][number]): TraceLine {
  const { file, line, sheet } = source;
  return { what: "on order", device: "no", item, quantity, order, arrives: isoOrNull(arrives), file, line, sheet };
}

function mentionLine({ id, file, line, sheet }: Mention): TraceLine {
  return { what: "not counted", lot: id, file, line, sheet };
}

function yesNo(is: boolean): string {
  return is ? "yes" : "no";
}
