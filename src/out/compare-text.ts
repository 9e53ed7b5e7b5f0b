import { countText, tenthsText } from "../fleet/count-text.ts";
import { NO_CURRENCY } from "../fleet/currency.ts";
import { groupedMoney } from "../fleet/money-text.ts";
import type { Comparison, ItemBeside, OrderChanged, PackMoved } from "./comparison.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Packs and order lines shown before the rest is counted. */
const SHOWN = 20;

/** Two plans side by side for a terminal: what changed, spend, items, dates that moved and orders. */
export function compareText(of: Comparison, setting: TextSetting): string {
  const { width } = setting;
  const { a, b } = of.plans;
  // what is bought under another name has stock and packs alone
  const items = of.items.filter(({ needed, units }) => needed.a + needed.b + units.a + units.b > 0);
  const months = of.months === null ? "no month in common" : `${of.months.from} to ${of.months.to}`;
  return joinLines([
    titleLine(`Compared over ${months}`, setting),
    wrapText(`A: ${a.label}, as of ${a.asOf}`, width, "   "),
    wrapText(`B: ${b.label}, as of ${b.asOf}`, width, "   "),
    ...section("What changed from A to B", bullets(of.says, setting), setting),
    ...section(
      "Spend by fiscal year of the order",
      of.spend.some(hasAmount) ? [spendTable(of.spend.filter(hasAmount), width)] : [],
      setting,
    ),
    ...section("Items", items.length > 0 ? [itemsTable(items, width)] : [], setting),
    ...section(
      "Packs whose likely date moved",
      firstShown(of.packs, (packs) => packsTable(packs, width)),
      setting,
    ),
    ...section(
      "Order lines that differ",
      firstShown(of.orders, (orders) => orderTable(orders, width)),
      setting,
    ),
  ]);
}

/** The table of the first rows, and how many more there are. */
function firstShown<Row>(rows: readonly Row[], table: (rows: readonly Row[]) => string): string[] {
  if (rows.length === 0) return [];
  const more = rows.length - SHOWN;
  return [table(rows.slice(0, SHOWN)), ...(more > 0 ? [`${countText(more)} more in --json.`] : [])];
}

const isNamed = ({ currency }: { currency: string }) => currency !== NO_CURRENCY;

/** Whether either plan has an amount in a year: without prices there is none. */
function hasAmount({ a, b }: Comparison["spend"][number]): boolean {
  return Math.max(a?.planned ?? 0, a?.p95 ?? 0, b?.planned ?? 0, b?.p95 ?? 0) > 0;
}

function spendTable(spend: Comparison["spend"], width: number): string {
  type Year = Comparison["spend"][number];
  const money = (year: Year, amount: number | undefined) =>
    amount === undefined ? "-" : groupedMoney(amount, year.currency);
  return textTable<Year>(
    [
      { head: "fiscal year", cell: (year) => year.fiscalYear },
      ...(spend.some(isNamed) ? [{ head: "", cell: (year: Year) => (isNamed(year) ? year.currency : "-") }] : []),
      { head: "planned A", align: "right", cell: (year) => money(year, year.a?.planned) },
      { head: "planned B", align: "right", cell: (year) => money(year, year.b?.planned) },
      { head: "likely A", align: "right", dropRank: 1, cell: (year) => money(year, year.a?.p50) },
      { head: "likely B", align: "right", dropRank: 1, cell: (year) => money(year, year.b?.p50) },
      { head: "safe A", align: "right", cell: (year) => money(year, year.a?.p95) },
      { head: "safe B", align: "right", cell: (year) => money(year, year.b?.p95) },
    ],
    spend,
    width,
  );
}

function itemsTable(items: readonly ItemBeside[], width: number): string {
  return textTable<ItemBeside>(
    [
      { head: "item", cell: (row) => row.item, clipTo: 12 },
      { head: "needed A", align: "right", dropRank: 1, cell: (row) => tenthsText(row.needed.a) },
      { head: "needed B", align: "right", dropRank: 1, cell: (row) => tenthsText(row.needed.b) },
      { head: "units A", align: "right", cell: (row) => countText(row.units.a) },
      { head: "units B", align: "right", cell: (row) => countText(row.units.b) },
      { head: "orders A", align: "right", cell: (row) => countText(row.orders.a) },
      { head: "orders B", align: "right", cell: (row) => countText(row.orders.b) },
    ],
    items,
    width,
  );
}

function packsTable(packs: readonly PackMoved[], width: number): string {
  return textTable<PackMoved>(
    [
      { head: "serial", cell: (row) => row.serial, clipTo: 12 },
      { head: "item", cell: (row) => row.item, clipTo: 12, dropRank: 2 },
      { head: "A", cell: (row) => row.replaceBy.a ?? "none" },
      { head: "B", cell: (row) => row.replaceBy.b ?? "none" },
      { head: "days later", align: "right", cell: (row) => (row.daysLater === null ? "-" : String(row.daysLater)) },
      { head: "new readings", align: "right", dropRank: 1, cell: (row) => countText(row.newReadings) },
    ],
    packs,
    width,
  );
}

function orderTable(orders: readonly OrderChanged[], width: number): string {
  const units = (value: number | null) => (value === null ? "-" : countText(value));
  const currencies = [...new Set(orders.map((row) => row.currency))];
  const more = (row: OrderChanged) => {
    const [a, b] = [row.change === "new" ? 0 : row.cost.a, row.change === "gone" ? 0 : row.cost.b];
    if (a === null || b === null) return "-";
    const text = groupedMoney(b - a, row.currency);
    return currencies.length > 1 && isNamed(row) ? `${text} ${row.currency}` : text;
  };
  const inOne = currencies.length === 1 && orders.some(isNamed) ? `, ${currencies[0]}` : "";
  return textTable<OrderChanged>(
    [
      { head: "", cell: (row) => row.change },
      { head: "item", cell: (row) => row.item, clipTo: 12 },
      { head: "supplier", cell: (row) => row.supplier, clipTo: 10, dropRank: 1 },
      { head: "order by A", cell: (row) => row.orderBy.a ?? "-" },
      { head: "order by B", cell: (row) => row.orderBy.b ?? "-" },
      { head: "units A", align: "right", cell: (row) => units(row.quantity.a) },
      { head: "units B", align: "right", cell: (row) => units(row.quantity.b) },
      { head: `B costs more${inOne}`, align: "right", cell: more },
    ],
    orders,
    width,
  );
}
