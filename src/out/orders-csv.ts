import { csvText } from "./csv.ts";
import { decimalMoney } from "./money-text.ts";
import type { Plan } from "./plan-schema.ts";

const HEADER = [
  "order_by",
  "late",
  "supplier",
  "item",
  "quantity",
  "boxes",
  "unit_price",
  "line_cost",
  "fee_share",
  "currency",
  "arrive_by",
  "uncovered_until",
  "covers_from",
  "covers_to",
  "expected_waste",
  "reason",
  "order",
  "id",
];

/** orders.csv: one line an order line, by order-by date; money in major units. */
export function ordersCsv(plan: Plan): string {
  return csvText(
    HEADER,
    plan.orders.map((line) => [
      line.orderBy,
      line.late ? "yes" : "no",
      line.supplier,
      line.item,
      line.quantity,
      line.boxes,
      line.unitPrice,
      decimalMoney(line.lineCost, line.currency),
      decimalMoney(line.feeShare, line.currency),
      line.currency,
      line.arriveBy,
      line.uncoveredUntil,
      line.covers.from,
      line.covers.to,
      line.expectedWaste,
      line.reason,
      line.order,
      line.id,
    ]),
  );
}
