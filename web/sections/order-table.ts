import { FORECAST_NOTE, isForecast, isPriced, type Plan } from "../../src/index.ts";
import { actOn, notYet } from "../act-on.ts";
import { countColumn, dayColumn } from "../columns.ts";
import { make } from "../dom.ts";
import { filteredTable } from "../filtered-table.ts";
import { moneyWords, priceWords, sentenceWords } from "../format.ts";
import { orderCosts } from "../order-costs.ts";
import { fiscalYearOf } from "../spend-by-month.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import type { Column, TableSpec } from "../table-spec.ts";

type Order = Plan["orders"][number];

// Some five printed pages.
const PRINTED = 100;

/** What the mark of a line that is not to be ordered yet means; nothing where no line bears it. */
export function forecastNote(orders: readonly Order[], asOf: string): HTMLElement | false {
  return orders.some((order) => isForecast(order, asOf)) && make("p", {}, FORECAST_NOTE);
}

/** A few order lines as a table: the day to act on first; what is late, or not to be ordered yet, says so in words. */
export function orderTable(spec: { caption: string; asOf: string; orders: Order[] }): HTMLElement {
  return table({ ...shaped(spec), sortable: false });
}

/** The whole schedule, to be narrowed; then it says what is left of it comes to. */
export function scheduleTable(plan: Plan, caption: string): HTMLElement {
  const words = say.orders.filters;
  const startsInMonth = Number(plan.policy.fiscal_year_starts ?? 1);
  const spec = shaped({ caption, asOf: plan.asOf, orders: plan.orders });
  spec.columns.splice(
    3,
    0,
    countColumn(say.orders.heads.boxes, (row) => row.boxes),
  );
  spec.columns.splice(5, 0, {
    title: say.orders.heads.unitPrice,
    value: (row) => (isPriced(row) ? Number(row.unitPrice) : null),
    show: (row) => (isPriced(row) ? priceWords(row.unitPrice, row.currency) : null),
    figures: true,
  });
  if (plan.orders.some((row) => row.feeShare > 0)) {
    spec.columns.splice(7, 0, {
      title: say.orders.heads.fee,
      value: (row) => row.feeShare,
      show: (row) => (row.feeShare === 0 ? say.none : moneyWords(row.feeShare, row.currency)),
      figures: true,
    });
  }
  return filteredTable(
    spec,
    [
      { id: "filter-supplier", label: words.supplier, of: (row) => row.supplier },
      { id: "filter-ordered-item", label: words.item, of: (row) => row.item },
      { id: "filter-year", label: words.year, of: (row) => fiscalYearOf(row.orderBy.slice(0, 7), startsInMonth) },
    ],
    (rows) =>
      words.sum(
        rows.reduce((sum, { quantity }) => sum + quantity, 0),
        orderCosts([...rows]),
      ),
  );
}

function shaped(spec: { caption: string; asOf: string; orders: Order[] }): TableSpec<Order> {
  const heads = say.orders.heads;
  const columns: Column<Order>[] = [
    {
      title: heads.orderBy,
      value: (row) => row.orderBy,
      show: (row) =>
        isForecast(row, spec.asOf)
          ? notYet(row.orderBy, say.orders.forecast)
          : actOn(row.orderBy, row.late && say.orders.late),
    },
    { title: heads.item, value: (row) => row.item, wide: true },
    countColumn(heads.quantity, (row) => row.quantity),
    { title: heads.supplier, value: (row) => row.supplier },
    {
      title: heads.lineCost,
      value: (row) => (isPriced(row) ? row.lineCost : null),
      show: (row) => (isPriced(row) ? moneyWords(row.lineCost, row.currency) : null),
      figures: true,
    },
    dayColumn(heads.arrives, (row) => row.arriveBy),
  ];
  return {
    caption: spec.caption,
    columns,
    rows: spec.orders,
    printed: PRINTED,
    file: "orders.csv",
    below: (row) => sentenceWords(row.reason),
  };
}
