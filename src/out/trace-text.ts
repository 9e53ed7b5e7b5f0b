import { type Day, isoFromDay, isoOrNull } from "../calendar/day.ts";
import { counted, countText } from "../fleet/count-text.ts";
import { groupBy } from "../fleet/group-by.ts";
import { placeText } from "../fleet/place-text.ts";
import type { Mention } from "../supplies/mentions.ts";
import { NO_PLACE, type Trace, type TracedAs, type TracedItem, type TracedStock } from "../supplies/traced.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { type TextColumn, textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Identifiers told in the title; of more only their number. */
const IDS_IN_TITLE = 5;

/** Lines told of an identifier that stands where nothing was counted; of more only their number. */
const LINES_TOLD = 8;

const TRACED_AS: { as: TracedAs; one: string; several: string }[] = [
  { as: "lot", one: "a lot", several: "Lots" },
  { as: "serial", one: "a serial", several: "Serials" },
  { as: "gtin", one: "a GTIN", several: "GTINs" },
  { as: "order", one: "an order number", several: "Order numbers" },
];

/**
 * What identifiers touch, for a terminal: what each is, where it lies, and what it takes to do without.
 *
 * @param mentions  lines that name one of them and that nothing here counts
 */
export function traceText(trace: Trace, mentions: readonly Mention[], asOf: Day, setting: TextSetting): string {
  const { width } = setting;
  return joinLines([
    titleLine(`Traced as of ${isoFromDay(asOf)}: ${toldIds(trace)}`, setting),
    "",
    ...identityLines(trace, mentions).map((line) => wrapText(line, width)),
    ...section("What it takes to do without", trace.items.length > 0 ? itemsLines(trace.items, width) : [], setting),
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

/** The identifiers where they are few, else how many they are. */
function toldIds({ ids }: Trace): string {
  return ids.length <= IDS_IN_TITLE ? ids.map(({ id }) => id).join(", ") : `${countText(ids.length)} identifiers`;
}

/** What each identifier turned out to be, which are wrong labels, where else they stand, and which are in no sheet. */
function identityLines({ ids }: Trace, mentions: readonly Mention[]): string[] {
  const kinds = TRACED_AS.flatMap(({ as, one, several }) => {
    const found = ids.filter((traced) => traced.as.includes(as)).map(({ id }) => id);
    const [only] = found;
    if (only === undefined) return [];
    if (found.length > 1) return [`${several}: ${found.join(", ")}.`];
    return [
      only.endsWith("*") ? `${only} is the start of ${one} in these sheets.` : `${only} is ${one} in these sheets.`,
    ];
  });
  const wrong = ids.flatMap((one) => (one.wrong ? [`The label ${one.id} ${one.wrong}. Scan it again.`] : []));
  const lines = groupBy(mentions, ({ id }) => id);
  const beside = [...lines].map(([id, at]) => {
    const more = at.length > LINES_TOLD ? ` and ${countText(at.length - LINES_TOLD)} more` : "";
    const places = at.slice(0, LINES_TOLD).map(placeText).join("; ");
    return `${id} stands in lines that nothing here counts, set aside or not read as a lot or serial: ${places}${more}. Look there, too; wanecast check says why.`;
  });
  const unknown = ids.filter(({ id, as, wrong: bad }) => as.length === 0 && !bad && !lines.has(id)).map(({ id }) => id);
  const told = [...kinds, ...wrong, ...beside];
  if (unknown.length === 0) return told;
  return [
    ...told,
    `Not in these sheets: ${unknown.join(", ")}. Check the spelling; the start of a lot or serial and * finds all that start so.`,
  ];
}

function itemsLines(items: readonly TracedItem[], width: number): string[] {
  const table = itemsTable(items, width);
  if (items.every(({ lacking }) => lacking === 0)) return [table];
  const how =
    "Units lacking can be there on the day in the last column: from what is on order, or from an order that leaves today.";
  return [table, "", wrapText(how, width)];
}

/** The day on which nothing is lacking any more. */
function coverText({ lacking, coveredOn }: TracedItem): string {
  return lacking === 0 ? "now" : (isoOrNull(coveredOn) ?? "not known");
}

function itemsTable(items: readonly TracedItem[], width: number): string {
  return textTable<TracedItem>(
    [
      { head: "item", cell: ({ item }) => item, clipTo: 10 },
      { head: "in use", align: "right", cell: ({ inUse }) => countText(inUse) },
      { head: "on shelves", align: "right", cell: ({ onShelves }) => countText(onShelves) },
      { head: "on order", align: "right", cell: ({ onOrder }) => countText(onOrder) },
      { head: "usable elsewhere", align: "right", cell: ({ usableElsewhere }) => countText(usableElsewhere) },
      { head: "lacking", align: "right", cell: ({ lacking }) => countText(lacking) },
      ...(items.some(({ lacking }) => lacking > 0)
        ? [{ head: "covered on", cell: (item: TracedItem) => coverText(item) }]
        : []),
    ],
    items,
    width,
  );
}

function placesTable({ places }: Trace, width: number): string {
  return textTable<Trace["places"][number]>(
    [
      { head: "place", cell: ({ place }) => place, clipTo: 12 },
      { head: "is a", cell: ({ place, device }) => (device ? "device" : place === NO_PLACE ? "-" : "store or site") },
      { head: "units", align: "right", cell: ({ units }) => countText(units) },
      { head: "packs", align: "right", cell: ({ packs }) => countText(packs) },
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
      ...(stock.some(({ row }) => row.serial !== null)
        ? [{ head: "serial", cell: ({ row }: TracedStock) => row.serial ?? "-", dropRank: 1 }]
        : []),
      { head: "units", align: "right", cell: ({ row }) => countText(row.quantity) },
      { head: "expiry", cell: ({ row }) => isoFromDay(row.expiry) },
      { head: "swap by", cell: ({ swapBy }) => isoFromDay(swapBy) },
      ...heldColumn(stock, ({ row }) => row.held),
      { head: "stands in", cell: ({ row }) => placeText(row.source), dropRank: 2 },
    ],
    stock,
    width,
  );
}

/** Why each is held, where any is. */
function heldColumn<Row>(rows: readonly Row[], heldOf: (row: Row) => string | null): TextColumn<Row>[] {
  if (rows.every((row) => heldOf(row) === null)) return [];
  return [{ head: "held", cell: (row) => heldOf(row) ?? "", clipTo: 8 }];
}

function packsTable({ packs }: Trace, width: number): string {
  return textTable<Trace["packs"][number]>(
    [
      { head: "serial", cell: ({ serial }) => serial },
      { head: "item", cell: ({ item }) => item ?? "-", clipTo: 10 },
      { head: "device", cell: ({ device }) => device ?? "-", clipTo: 10 },
      { head: "site", cell: ({ site }) => site ?? "-", dropRank: 1 },
      { head: "retired", cell: ({ retired }) => isoOrNull(retired) ?? "-", dropRank: 2 },
      ...heldColumn(packs, ({ held }) => held),
    ],
    packs,
    width,
  );
}
