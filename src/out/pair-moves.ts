import { sortBy } from "../maths/sort-by.ts";
import type { Plan } from "./plan-schema.ts";

type MoveRow = Plan["moves"][number];

/** What two places exchange of one item: one line of a driver's list, both ways. */
export interface Exchange {
  /** The sooner day of both ways. */
  by: string;
  from: string;
  to: string;
  item: string;
  out: Pick<MoveRow, "lot" | "quantity">[];
  /** Empty where a unit comes back by a third place. */
  back: Pick<MoveRow, "lot" | "quantity">[];
  /** Both ways together. */
  unitsSaved: number;
}

/** Moves with the two directions of an exchange made one; those that save most stand first. */
export function pairMoves(moves: readonly MoveRow[]): Exchange[] {
  const pairs = new Map<string, Exchange>();
  for (const { from, to, item, by, lot, quantity, unitsSaved } of moves) {
    const key = JSON.stringify([...[from, to].sort(), item]);
    const found = pairs.get(key) ?? { by, from, to, item, out: [], back: [], unitsSaved: 0 };
    (found.from === from ? found.out : found.back).push({ lot, quantity });
    if (by < found.by) found.by = by;
    found.unitsSaved += unitsSaved;
    pairs.set(key, found);
  }
  // sums of rounded shares, so that equal savings stay equal
  return sortBy([...pairs.values()], ({ unitsSaved, by, from, to, item }) => [
    -Math.round(unitsSaved * 1000),
    by,
    from,
    to,
    item,
  ]);
}
