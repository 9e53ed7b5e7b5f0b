import { NO_CURRENCY } from "../fleet/currency.ts";
import { decimalMoney } from "../fleet/money-text.ts";
import { csvOf } from "./csv.ts";
import { isForecast, isPriced } from "./line-standing.ts";
import type { Plan } from "./plan-schema.ts";

/**
 * orders.csv: one line an order line, by order-by date; money in major units, blank where no price is known. New columns go
 * to the end.
 */
export function ordersCsv(plan: Plan): string {
  return csvOf(plan.orders, {
    order_by: (line) => line.orderBy,
    late: (line) => (line.late ? "yes" : "no"),
    supplier: (line) => line.supplier,
    item: (line) => line.item,
    quantity: (line) => line.quantity,
    boxes: (line) => line.boxes,
    unit_price: (line) => (isPriced(line) ? line.unitPrice : null),
    line_cost: (line) => (isPriced(line) ? decimalMoney(line.lineCost, line.currency) : null),
    fee_share: (line) => decimalMoney(line.feeShare, line.currency),
    currency: (line) => (line.currency === NO_CURRENCY ? null : line.currency),
    arrive_by: (line) => line.arriveBy,
    uncovered_until: (line) => line.uncoveredUntil,
    covers_from: (line) => line.covers.from,
    covers_to: (line) => line.covers.to,
    expected_waste: (line) => line.expectedWaste,
    reason: (line) => line.reason,
    order: (line) => line.order,
    id: (line) => line.id,
    gtin: (line) => line.gtin,
    forecast: (line) => (isForecast(line, plan.asOf) ? "yes" : "no"),
  });
}
