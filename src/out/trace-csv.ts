import { isoFromDay } from "../calendar/day.ts";
import type { Trace } from "../supplies/trace.ts";
import { csvText } from "./csv.ts";

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
];

/** trace.csv: one line a row of the sheets that is touched, as a list to walk round with: stock, packs, open orders. */
export function traceCsv({ stock, packs, orders }: Trace): string {
  return csvText(HEADER, [
    ...stock.map(({ row, installed, swapBy }) => [
      "dated stock",
      row.place,
      installed ? "yes" : "no",
      row.item,
      row.lot,
      row.serial,
      row.quantity,
      isoFromDay(row.expiry),
      isoFromDay(swapBy),
      row.held,
      null,
      null,
      row.source.file,
      row.source.line,
    ]),
    ...packs.map(({ device, site, item, serial, retired, held, source }) => [
      retired === null ? "pack" : "retired pack",
      device ?? site,
      device === null ? "no" : "yes",
      item,
      null,
      serial,
      1,
      null,
      null,
      held,
      null,
      null,
      source.file,
      source.line,
    ]),
    ...orders.map(({ item, quantity, order, arrives, source }) => [
      "on order",
      null,
      "no",
      item,
      null,
      null,
      quantity,
      null,
      null,
      null,
      order,
      arrives === null ? null : isoFromDay(arrives),
      source.file,
      source.line,
    ]),
  ]);
}
