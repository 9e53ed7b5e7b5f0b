import { monthFromText } from "../calendar/month.ts";
import type { Comparison, ItemBeside } from "./comparison.ts";
import type { Plan } from "./plan-schema.ts";
import { roundUnits } from "./rounding.ts";

/** Needs, orders, stock, prices and readings of every item of two plans, over the months that both hold. */
export function compareItems(a: Plan, b: Plan, months: Comparison["months"]): ItemBeside[] {
  const names = new Set([...a.demand, ...b.demand, ...a.orders, ...b.orders].map((row) => row.item));
  return [...names].sort().map((item) => {
    const [one, other] = [itemIn(a, item, months), itemIn(b, item, months)];
    const currencies = new Set([...one.currencies, ...other.currencies]);
    return {
      item,
      needed: { a: one.needed, b: other.needed },
      units: { a: one.units, b: other.units },
      orders: { a: one.orders, b: other.orders },
      cost: { a: one.cost, b: other.cost, currency: currencies.size === 1 ? [...currencies][0]! : null },
      stock: { a: one.stock, b: other.stock },
      unitPrice: { a: one.unitPrice, b: other.unitPrice },
      firstUnits: { a: one.firstUnits, b: other.firstUnits },
      firstCurrency: { a: one.firstCurrency, b: other.firstCurrency },
      readings: { a: one.readings, b: other.readings },
    };
  });
}

/** Order lines for needs that start within the months. */
export function linesWithin(plan: Plan, months: Comparison["months"]): Plan["orders"] {
  return plan.orders.filter((line) => months && line.covers.from >= months.from && line.covers.from <= months.to);
}

function itemIn(plan: Plan, item: string, months: Comparison["months"]) {
  const lines = linesWithin(plan, months).filter((line) => line.item === item);
  const sum = (of: (line: Plan["orders"][number]) => number) => lines.reduce((all, line) => all + of(line), 0);
  return {
    needed: roundUnits(neededIn(plan, item, months)),
    units: sum((line) => line.quantity),
    orders: lines.length,
    cost: sum((line) => line.lineCost + line.feeShare),
    currencies: new Set(lines.map((line) => line.currency)),
    unitPrice: lines[0]?.unitPrice ?? null,
    firstUnits: lines[0]?.quantity ?? 0,
    firstCurrency: lines[0]?.currency ?? null,
    stock: plan.datedStock.filter((row) => row.item === item).reduce((all, row) => all + row.quantity, 0),
    readings: plan.packs.filter((row) => row.item === item).reduce((all, row) => all + row.readings, 0),
  };
}

function neededIn(plan: Plan, item: string, months: Comparison["months"]): number {
  const row = plan.demand.find((one) => one.item === item);
  if (!row || !months) return 0;
  const start = monthFromText(row.from)!;
  const first = monthFromText(months.from)! - start;
  const last = monthFromText(months.to)! - start;
  return row.mean.slice(Math.max(0, first), last + 1).reduce((all, units) => all + units, 0);
}
