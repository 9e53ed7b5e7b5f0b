import { type Day, isoFromDay } from "../calendar/day.ts";
import type { Trace, TracedItem, TracedStock } from "../supplies/trace.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { counted } from "./count-text.ts";
import { ENGINE } from "./engine.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

const dayOrNull = (day: Day | null) => (day === null ? null : isoFromDay(day));

/** What identifiers touch, as JSON, format `wanecast.trace/1`. */
export function traceJson(trace: Trace, asOf: Day): object {
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
    packs: trace.packs.map(({ serial, item, device, site, retired, source }) => ({
      serial,
      item,
      device,
      site,
      retired: dayOrNull(retired),
      source,
    })),
    onOrder: trace.orders.map(({ item, quantity, arrives, supplier, order, source }) => ({
      item,
      quantity,
      arrives: dayOrNull(arrives),
      supplier,
      order,
      source,
    })),
    items: trace.items,
    cautions: STANDING_CAUTIONS,
  };
}

/** What identifiers touch, for a terminal: what each is, where it lies, and what it takes to do without. */
export function traceText(trace: Trace, asOf: Day, setting: TextSetting): string {
  const { width } = setting;
  const unknown = trace.ids.filter(({ as }) => as.length === 0).map(({ id }) => id);
  const known = trace.ids.filter(({ as }) => as.length > 0);
  return joinLines([
    titleLine(`Traced as of ${isoFromDay(asOf)}: ${trace.ids.map(({ id }) => id).join(", ")}`, setting),
    wrapText(known.map(({ id, as }) => `${id} is a ${as.join(" and a ")} in these sheets.`).join(" "), width),
    ...(unknown.length > 0
      ? [
          wrapText(
            `Not in these sheets: ${unknown.join(", ")}. Check the spelling; PREFIX* finds all that start so.`,
            width,
          ),
        ]
      : []),
    ...section("What it takes to do without", trace.items.length > 0 ? [itemsTable(trace.items, width)] : [], setting),
    ...section("Where it lies", trace.places.length > 0 ? [placesTable(trace, width)] : [], setting),
    ...section("Dated stock", trace.stock.length > 0 ? [stockTable(trace.stock, width)] : [], setting),
    ...section("Packs", trace.packs.length > 0 ? [packsTable(trace, width)] : [], setting),
    ...section(
      "On order",
      bullets(
        trace.orders.map(
          ({ item, quantity, order, supplier, arrives }) =>
            `${counted(quantity, "unit")} of ${item}${order === null ? "" : `, order ${order}`}${supplier === null ? "" : `, from ${supplier}`}${arrives === null ? "" : `, arriving ${isoFromDay(arrives)}`}.`,
        ),
        setting,
      ),
      setting,
    ),
    ...section("Cautions", bullets([...STANDING_CAUTIONS], setting), setting),
  ]);
}

function itemsTable(items: readonly TracedItem[], width: number): string {
  return textTable<TracedItem>(
    [
      { head: "item", cell: ({ item }) => item, clipTo: 10 },
      { head: "in use", align: "right", cell: ({ inUse }) => String(inUse) },
      { head: "on shelves", align: "right", cell: ({ onShelves }) => String(onShelves) },
      { head: "on order", align: "right", cell: ({ onOrder }) => String(onOrder) },
      { head: "usable elsewhere", align: "right", cell: ({ usableElsewhere }) => String(usableElsewhere) },
      { head: "lacking", align: "right", cell: ({ lacking }) => String(lacking) },
    ],
    items,
    width,
  );
}

function placesTable({ places }: Trace, width: number): string {
  return textTable<Trace["places"][number]>(
    [
      { head: "place", cell: ({ place }) => place, clipTo: 12 },
      { head: "is a", cell: ({ device }) => (device ? "device" : "store or site") },
      { head: "units", align: "right", cell: ({ units }) => String(units) },
      { head: "packs", align: "right", cell: ({ packs }) => String(packs) },
    ],
    places,
    width,
  );
}

function stockTable(stock: readonly TracedStock[], width: number): string {
  return textTable<TracedStock>(
    [
      { head: "place", cell: ({ row }) => row.place ?? "-", clipTo: 10 },
      { head: "item", cell: ({ row }) => row.item, clipTo: 10 },
      { head: "lot", cell: ({ row }) => row.lot ?? "-" },
      { head: "serial", cell: ({ row }) => row.serial ?? "-", dropRank: 1 },
      { head: "units", align: "right", cell: ({ row }) => String(row.quantity) },
      { head: "expiry", cell: ({ row }) => isoFromDay(row.expiry) },
      { head: "swap by", cell: ({ swapBy }) => isoFromDay(swapBy) },
      { head: "line", cell: ({ row }) => `${row.source.file}:${row.source.line}`, dropRank: 2 },
    ],
    stock,
    width,
  );
}

function packsTable({ packs }: Trace, width: number): string {
  return textTable<Trace["packs"][number]>(
    [
      { head: "serial", cell: ({ serial }) => serial },
      { head: "item", cell: ({ item }) => item ?? "-", clipTo: 10 },
      { head: "device", cell: ({ device }) => device ?? "-", clipTo: 10 },
      { head: "site", cell: ({ site }) => site ?? "-", dropRank: 1 },
      { head: "retired", cell: ({ retired }) => dayOrNull(retired) ?? "-", dropRank: 2 },
    ],
    packs,
    width,
  );
}
