import { sortBy } from "../maths/sort-by.ts";
import { linesWithin } from "./compare-items.ts";
import type { Comparison, OrderChanged } from "./comparison.ts";
import type { Plan } from "./plan-schema.ts";

/** Order lines for needs of the shared months that are in one plan only, or differ in day, size or price (fees apart). */
export function compareOrders(a: Plan, b: Plan, months: Comparison["months"]): OrderChanged[] {
  const keyed = (plan: Plan) => new Map(linesWithin(plan, months).map((line) => [line.id, line]));
  const before = keyed(a);
  const after = keyed(b);
  const cost = (line: Plan["orders"][number]) => line.lineCost + line.feeShare;
  const changed = [...new Set([...before.keys(), ...after.keys()])].flatMap((id): OrderChanged[] => {
    const [one, other] = [before.get(id), after.get(id)];
    const { item, supplier, currency } = (other ?? one)!;
    if (one && other) {
      const same = one.orderBy === other.orderBy && one.quantity === other.quantity && one.lineCost === other.lineCost;
      if (same && one.currency === other.currency) return [];
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
