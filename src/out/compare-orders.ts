import { nameKey } from "../fleet/name-key.ts";
import { sortBy } from "../maths/sort-by.ts";
import { linesWithin } from "./compare-items.ts";
import type { Comparison, OrderChanged } from "./comparison.ts";
import { isPriced } from "./line-standing.ts";
import type { Plan } from "./plan-schema.ts";

type Line = Plan["orders"][number];

/**
 * Order lines for needs of the shared months that are in one plan only, or differ in day, size or price (fees apart). What
 * is now bought in another currency is gone in the one and new in the other.
 */
export function compareOrders(a: Plan, b: Plan, months: Comparison["months"]): OrderChanged[] {
  const keyed = (plan: Plan) => new Map(linesWithin(plan, months).map((line) => [nameKey(line.id), line]));
  const before = keyed(a);
  const after = keyed(b);
  const changed = [...new Set([...before.keys(), ...after.keys()])].flatMap((key): OrderChanged[] => {
    const [one, other] = [before.get(key), after.get(key)];
    if (!one || !other) return [changeOf(one, other)];
    if (isPriced(one) && isPriced(other) && one.currency !== other.currency)
      return [changeOf(one, undefined), changeOf(undefined, other)];
    const same = one.orderBy === other.orderBy && one.quantity === other.quantity && one.lineCost === other.lineCost;
    return same ? [] : [changeOf(one, other)];
  });
  return sortBy(changed, (one) => [one.orderBy.b ?? one.orderBy.a, one.supplier, one.item, one.id]);
}

function changeOf(one: Line | undefined, other: Line | undefined): OrderChanged {
  const { id, item, supplier } = (other ?? one)!;
  const cost = (line?: Line) => (line && isPriced(line) ? line.lineCost + line.feeShare : null);
  return {
    id,
    item,
    supplier,
    change: !one ? "new" : !other ? "gone" : "changed",
    orderBy: { a: one?.orderBy ?? null, b: other?.orderBy ?? null },
    quantity: { a: one?.quantity ?? null, b: other?.quantity ?? null },
    cost: { a: cost(one), b: cost(other) },
    currency: (other && isPriced(other) ? other : (one ?? other))!.currency,
  };
}
