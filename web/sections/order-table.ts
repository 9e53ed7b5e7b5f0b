import { isForecast, isPriced, type Plan } from "../../src/index.ts";
import { actOn, notYet } from "../act-on.ts";
import { filteredTable } from "../filtered-table.ts";
import { dayWords, moneyWords, numberWords, sentenceWords } from "../format.ts";
import { say } from "../strings.ts";
import { type Column, table } from "../table.ts";

type Order = Plan["orders"][number];

// Some five printed pages.
const PRINTED = 100;

/** Order lines as a table: the day to act on first; what is late, or not to be ordered yet, says so in words. */
export function orderTable(spec: { caption: string; asOf: string; orders: Order[]; short: boolean }): HTMLElement {
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
    { title: heads.quantity, value: (row) => row.quantity, show: (row) => numberWords(row.quantity), figures: true },
    { title: heads.supplier, value: (row) => row.supplier },
    {
      title: heads.lineCost,
      value: (row) => (isPriced(row) ? row.lineCost : null),
      show: (row) => (isPriced(row) ? moneyWords(row.lineCost, row.currency) : null),
      figures: true,
    },
    { title: heads.arrives, value: (row) => row.arriveBy, show: (row) => dayWords(row.arriveBy) },
  ];
  if (!spec.short) {
    columns.splice(3, 0, {
      title: heads.boxes,
      value: (row) => row.boxes,
      show: (row) => numberWords(row.boxes),
      figures: true,
    });
    columns.splice(5, 0, {
      title: heads.unitPrice,
      value: (row) => (isPriced(row) ? Number(row.unitPrice) : null),
      show: (row) => (isPriced(row) ? row.unitPrice : null),
      figures: true,
    });
    if (spec.orders.some((row) => row.feeShare > 0)) {
      columns.splice(7, 0, {
        title: heads.fee,
        value: (row) => row.feeShare,
        show: (row) => (row.feeShare === 0 ? say.none : moneyWords(row.feeShare, row.currency)),
        figures: true,
      });
    }
  }
  const whole = {
    caption: spec.caption,
    columns,
    rows: spec.orders,
    sortable: !spec.short,
    printed: PRINTED,
    file: "orders.csv",
    below: (row: Order) => sentenceWords(row.reason),
  };
  if (spec.short) return table(whole);
  return filteredTable(whole, [
    { id: "filter-supplier", label: say.orders.filters.supplier, of: (row) => row.supplier },
    { id: "filter-ordered-item", label: say.orders.filters.item, of: (row) => row.item },
    { id: "filter-year", label: say.orders.filters.year, of: (row) => row.orderBy.slice(0, 4) },
  ]);
}
