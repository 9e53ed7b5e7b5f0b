import { nameKey } from "../fleet/name-key.ts";
import { sortBy } from "../maths/sort-by.ts";
import { linesWithin } from "./compare-items.ts";
import type { Comparison, OrderChanged } from "./comparison.ts";
import type { Plan } from "./plan-schema.ts";

/**
 * Order lines for needs of the shared months that are in one plan only, or differ in day, size or price (fees apart). What
 * is now bought in another currency is gone in the one and new in the other.
 */
export function compareOrders(a: Plan, b: Plan, months: Comparison["months"]): OrderChanged[] {
  const keyed = (plan: Plan) =>
    new Map(linesWithin(plan, months).map((line) => [`${line.currency} ${nameKey(line.id)}`, line]));
  const before = keyed(a);
  const after = keyed(b);
  const cost = (line: Plan["orders"][number]) => line.lineCost + line.feeShare;
  const changed = [...new Set([...before.keys(), ...after.keys()])].flatMap((key): OrderChanged[] => {
    const [one, other] = [before.get(key), after.get(key)];
    const { id, item, supplier, currency } = (other ?? one)!;
    if (one && other) {
      const same = one.orderBy === other.orderBy && one.quantity === other.quantity && one.lineCost === other.lineCost;
      if (same) return [];
    }
    return [
      {
        id,
        item,
        supplier,
        change: !one ? "new" : !other ? "gone" : "changed",
        orderBy: { a: one?.orderBy ?? null, b: other?.orderBy ?? null },
        quantity: { a: one?.quantity ?? null, b: other?.quantity ?? null },
        cost: { a: one ? cost(one) : null, b: other ? cost(other) : null },
        currency,
      },
    ];
  });
  return sortBy(changed, (one) => [one.orderBy.b ?? one.orderBy.a, one.supplier, one.item, one.id]);
}
