import { groupBy } from "../fleet/group-by.ts";
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
  const pairs = pairedLines(linesWithin(a, months), linesWithin(b, months));
  const changed = pairs.flatMap(([one, other]): OrderChanged[] => {
    if (!one || !other) return [changeOf(one, other)];
    if (isInOtherCurrency(one, other)) return [changeOf(one, undefined), changeOf(undefined, other)];
    const same = one.orderBy === other.orderBy && one.quantity === other.quantity && one.lineCost === other.lineCost;
    return same ? [] : [changeOf(one, other)];
  });
  return sortBy(changed, (one) => [one.orderBy.b ?? one.orderBy.a, one.supplier, one.item, one.id]);
}

const isInOtherCurrency = (one: Line, other: Line) =>
  isPriced(one) && isPriced(other) && one.currency !== other.currency;

type Pair = [Line | undefined, Line | undefined];

/**
 * Lines of two plans that are one order: those under one id, which names the first month that a line covers. Where that
 * month moved, the first of those left of the same item and supplier whose months overlap.
 */
function pairedLines(before: readonly Line[], after: readonly Line[]): Pair[] {
  const left = new Map(sortBy(before, (line) => [line.covers.from]).map((line) => [nameKey(line.id), line]));
  const pairs = sortBy(after, (line) => [line.covers.from]).map((line): Pair => {
    const one = left.get(nameKey(line.id));
    left.delete(nameKey(line.id));
    return [one, line];
  });
  const bought = ({ item, supplier }: Line) => `${nameKey(item)}\n${nameKey(supplier)}`;
  const moved = groupBy(left.values(), bought);
  const paired = pairs.map(([one, other]): Pair => {
    const found =
      one ?? moved.get(bought(other!))?.find((line) => left.has(nameKey(line.id)) && isOneOrder(line, other!));
    if (found) left.delete(nameKey(found.id));
    return [found, other!];
  });
  return [...paired, ...[...left.values()].map((line): Pair => [line, undefined])];
}

const isOneOrder = (one: Line, other: Line) =>
  one.covers.from <= other.covers.to && one.covers.to >= other.covers.from && !isInOtherCurrency(one, other);

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
