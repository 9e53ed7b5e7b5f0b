import { type Day, isoFromDay, isoOrNull } from "../calendar/day.ts";
import type { Mention } from "../supplies/mentions.ts";
import type { Trace } from "../supplies/traced.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { ENGINE } from "./engine.ts";

/** What identifiers touch, as JSON, format `wanecast.trace/1`. */
export function traceJson(trace: Trace, mentions: readonly Mention[], asOf: Day): object {
  return {
    format: "wanecast.trace/1",
    engine: ENGINE,
    asOf: isoFromDay(asOf),
    ids: trace.ids,
    places: trace.places,
    datedStock: trace.stock.map(({ row, installed, swapBy }) => ({
      item: row.item,
      lot: row.lot,
      serial: row.serial,
      expiry: isoFromDay(row.expiry),
      quantity: row.quantity,
      place: row.place,
      installed,
      swapBy: isoFromDay(swapBy),
      held: row.held,
      source: row.source,
    })),
    packs: trace.packs.map(({ serial, item, device, site, retired, held, source }) => ({
      serial,
      item,
      device,
      site,
      retired: isoOrNull(retired),
      held,
      source,
    })),
    onOrder: trace.orders.map(({ item, quantity, arrives, supplier, order, source }) => ({
      item,
      quantity,
      arrives: isoOrNull(arrives),
      supplier,
      order,
      source,
    })),
    items: trace.items.map((item) => ({ ...item, coveredOn: isoOrNull(item.coveredOn) })),
    notCounted: mentions,
    cautions: STANDING_CAUTIONS,
  };
}
