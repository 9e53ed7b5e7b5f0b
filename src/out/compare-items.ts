import { monthFromText } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import { remembered } from "../fleet/remembered.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { Comparison, ItemBeside } from "./comparison.ts";
import { isPriced } from "./line-standing.ts";
import type { Plan } from "./plan-schema.ts";
import { roundUnits } from "./rounding.ts";

/** Needs, orders, stock, prices and readings of every item of two plans, over the months that both hold. */
export function compareItems(a: Plan, b: Plan, months: Comparison["months"]): ItemBeside[] {
  // the plans, and sheets of the same plan, may spell an item in their own way
  const names = new Map(
    [a, b].flatMap(({ demand, orders, datedStock, packs }) =>
      [...datedStock, ...packs, ...demand, ...orders].map(({ item }) => [nameKey(item), item]),
    ),
  );
  const [inA, inB] = [itemsIn(a, months), itemsIn(b, months)];
  return sortBy([...names], ([, item]) => [item]).map(([key, item]) => {
    const [one, other] = [inA(key), inB(key)];
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

/** Tells what a plan has of an item, by its key. */
function itemsIn(plan: Plan, months: Comparison["months"]) {
  const keyOf = remembered(nameKey);
  const byKey = <Row extends { item: string }>(rows: readonly Row[]) => groupBy(rows, ({ item }) => keyOf(item));
  const [ordered, needed] = [byKey(linesWithin(plan, months)), byKey(plan.demand)];
  const [stock, groups] = [byKey(plan.datedStock), byKey(plan.fadeGroups)];
  return (key: string) => {
    const lines = ordered.get(key) ?? [];
    return {
      needed: roundUnits(sum(needed.get(key), (row) => neededIn(row, months))),
      units: sum(lines, (line) => line.quantity),
      orders: lines.length,
      cost: sum(lines, (line) => line.lineCost + line.feeShare),
      currencies: new Set(lines.map((line) => line.currency)),
      unitPrice: lines[0] && isPriced(lines[0]) ? lines[0].unitPrice : null,
      firstUnits: lines[0]?.quantity ?? 0,
      firstCurrency: lines[0]?.currency ?? null,
      stock: sum(stock.get(key), (row) => row.quantity),
      // a pack that was replaced is no row any more, but its readings are still there
      readings: sum(groups.get(key), (row) => row.readings),
    };
  };
}

function sum<Row>(rows: readonly Row[] = [], of: (row: Row) => number): number {
  return rows.reduce((all, row) => all + of(row), 0);
}

function neededIn({ from, mean }: Plan["demand"][number], months: Comparison["months"]): number {
  if (!months) return 0;
  const start = monthFromText(from)!;
  const first = monthFromText(months.from)! - start;
  const last = monthFromText(months.to)! - start;
  return mean.slice(Math.max(0, first), last + 1).reduce((all, units) => all + units, 0);
}
