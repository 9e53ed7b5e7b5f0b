import { dayFromIso } from "../../calendar/day.ts";
import { minorDigits, NO_CURRENCY } from "../../fleet/currency.ts";
import { groupBy } from "../../fleet/group-by.ts";
import { decimalMoney } from "../../fleet/money-text.ts";
import { sortBy } from "../../maths/sort-by.ts";
import { STANDING_CAUTIONS } from "../cautions.ts";
import { FORECAST_NOTE, isForecast, isPriced } from "../line-standing.ts";
import type { Plan } from "../plan-schema.ts";
import { tabNames } from "./tab-names.ts";
import { workbookText } from "./workbook-text.ts";
import { type Tab, workbookDay, writeWorkbook } from "./write-workbook.ts";

type Line = Plan["orders"][number];
type Cell = string | number | null;
type Row = Record<string, Cell>;

const DATE_WIDTH = 11;
const MONEY_WIDTH = 12;

const LINE_COLUMNS: { key: string; width: number; of: "date" | "price" | "money" | "text" | "words" | "count" }[] = [
  { key: "order_by", width: DATE_WIDTH, of: "date" },
  { key: "late", width: 6, of: "text" },
  { key: "forecast", width: 9, of: "text" },
  { key: "item", width: 24, of: "words" },
  { key: "gtin", width: 16, of: "text" },
  { key: "quantity", width: 10, of: "count" },
  { key: "boxes", width: 7, of: "count" },
  { key: "unit_price", width: MONEY_WIDTH, of: "price" },
  { key: "line_cost", width: MONEY_WIDTH, of: "money" },
  { key: "fee_share", width: MONEY_WIDTH, of: "money" },
  { key: "total", width: MONEY_WIDTH, of: "money" },
  { key: "currency", width: 9, of: "text" },
  { key: "arrive_by", width: DATE_WIDTH, of: "date" },
  { key: "covers_from", width: 13, of: "text" },
  { key: "covers_to", width: DATE_WIDTH, of: "text" },
  { key: "reason", width: 44, of: "words" },
  { key: "order", width: 16, of: "words" },
];

const TOTAL_COLUMNS: typeof LINE_COLUMNS = [
  { key: "supplier", width: 28, of: "text" },
  { key: "orders", width: 8, of: "count" },
  { key: "lines", width: 8, of: "count" },
  { key: "line_cost", width: MONEY_WIDTH, of: "money" },
  { key: "fee_share", width: MONEY_WIDTH, of: "money" },
  { key: "total", width: MONEY_WIDTH, of: "money" },
  { key: "currency", width: 9, of: "text" },
];

/**
 * The schedule as a workbook for a purchasing office: a tab of totals, then a tab for each supplier with its lines by
 * order-by date and a total for each currency. Money is in major units, and blank where no price is known. Every tab is
 * as wide as a printed page, and says on it as of when it was planned.
 */
export async function ordersWorkbook(plan: Plan): Promise<Uint8Array> {
  const bySupplier = [...groupBy(plan.orders, ({ supplier }) => supplier)];
  const suppliers = sortBy(bySupplier, ([supplier]) => [supplier]);
  const [totals = "", ...tabs] = tabNames(["Totals", ...suppliers.map(([supplier]) => supplier)]);
  return writeWorkbook([
    tab(plan, totals, TOTAL_COLUMNS, [...totalRows(suppliers, plan.orders), ...notes(plan)], plan.orders),
    ...suppliers.map(([, lines], index) => tab(plan, tabs[index]!, LINE_COLUMNS, lineRows(lines, plan.asOf), lines)),
  ]);
}

function tab(
  plan: Plan,
  name: string,
  columns: typeof LINE_COLUMNS,
  rows: readonly Row[],
  lines: readonly Line[],
): Tab {
  const amount = (digitsOf: (line: Line) => number) => {
    const digits = lines.reduce((most, line) => Math.max(most, digitsOf(line)), 0);
    return digits === 0 ? "#,##0" : `#,##0.${"0".repeat(digits)}`;
  };
  const formats: Record<string, string> = {
    date: "yyyy-mm-dd",
    price: amount(({ unitPrice }) => unitPrice.split(".")[1]?.length ?? 0),
    money: amount(({ currency }) => minorDigits(currency)),
  };
  return {
    name,
    columns: columns.map(({ key, width, of }) => ({
      header: key,
      key,
      width,
      wraps: of === "words",
      ...(formats[of] === undefined ? {} : { numFmt: formats[of] }),
    })),
    data: rows.map((row) => Object.fromEntries(columns.map(({ key }) => [key, row[key] ?? null]))),
    footer: `Planned as of ${plan.asOf}`,
  };
}

/** What a buyer should know who gets the workbook alone. */
function notes({ asOf, horizon }: Plan): Row[] {
  return ["", `Planned as of ${asOf}, for needs up to ${horizon.to}.`, FORECAST_NOTE, STANDING_CAUTIONS[0]!].map(
    (supplier) => ({ supplier }),
  );
}

function lineRows(lines: readonly Line[], asOf: string): Row[] {
  const rows = lines.map(
    (line): Row => ({
      order_by: dateCell(line.orderBy),
      late: line.late ? "yes" : "no",
      forecast: isForecast(line, asOf) ? "yes" : "no",
      item: workbookText(line.item),
      gtin: line.gtin === null ? null : workbookText(line.gtin),
      quantity: line.quantity,
      boxes: line.boxes,
      unit_price: isPriced(line) ? Number(line.unitPrice) : null,
      ...(costsSomething(line) ? costs([line], line.currency) : {}),
      ...(isPriced(line) ? {} : { line_cost: null }),
      arrive_by: dateCell(line.arriveBy),
      covers_from: line.covers.from,
      covers_to: line.covers.to,
      reason: workbookText(line.reason),
      order: workbookText(line.order),
    }),
  );
  return [...rows, ...byCurrency(lines).map((priced): Row => ({ item: totalLabel(lines), ...priced }))];
}

function totalRows(suppliers: readonly (readonly [string, readonly Line[]])[], all: readonly Line[]): Row[] {
  const rows = suppliers.flatMap(([supplier, lines]) =>
    [...groupBy(lines, ({ currency }) => currency)].map(
      ([currency, paid]): Row => ({
        supplier: workbookText(supplier),
        orders: new Set(paid.map(({ order }) => order)).size,
        lines: paid.length,
        ...(paid.some(costsSomething) ? costs(paid, currency) : {}),
      }),
    ),
  );
  return [...rows, ...byCurrency(all).map((priced): Row => ({ supplier: totalLabel(all), ...priced }))];
}

function totalLabel(lines: readonly Line[]): string {
  return lines.every(isPriced) ? "Total" : "Total of priced lines";
}

/** Sums of each currency by itself; none where no price is known. */
function byCurrency(lines: readonly Line[]): Row[] {
  const paid = groupBy(lines.filter(costsSomething), ({ currency }) => currency);
  return sortBy([...paid], ([currency]) => [currency]).map(([currency, of]) => costs(of, currency));
}

/** An order's fee is known where a price is not. */
function costsSomething({ lineCost, feeShare }: Line): boolean {
  return lineCost + feeShare > 0;
}

function costs(lines: readonly Line[], currency: string): Row {
  const lineCost = lines.reduce((sum, line) => sum + line.lineCost, 0);
  const feeShare = lines.reduce((sum, line) => sum + line.feeShare, 0);
  const named = currency === NO_CURRENCY ? null : currency;
  const major = (amount: number) => Number(decimalMoney(amount, currency));
  return { line_cost: major(lineCost), fee_share: major(feeShare), total: major(lineCost + feeShare), currency: named };
}

function dateCell(iso: string): number {
  return workbookDay(dayFromIso(iso)!);
}
