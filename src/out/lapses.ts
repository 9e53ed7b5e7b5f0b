import { sortBy } from "../maths/sort-by.ts";
import type { StockTally } from "../supplies/stock-tally.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import type { Move } from "../supplies/types.ts";
import { roundUnits } from "./rounding.ts";

/** Units of an item that reach their swap date inside the horizon, and what is expected to become of them. */
export interface Lapse {
  item: string;
  due: number;
  /** Of these, used before their swap date if nothing is done. */
  used: number;
  /** Units that the moves save from lapsing. */
  saved: number;
}

/** What is expected to lapse if nothing is done, by item, and how much of it the moves save. Held stock is left out. */
export function lapsesByItem(
  { names }: StockUnits,
  { due, used }: StockTally,
  moves: readonly Pick<Move, "item" | "unitsSaved">[],
): Lapse[] {
  const items = new Map<string, Lapse>();
  names.forEach(({ name: item }, number) => {
    const inPlan = due[number]!.slice(1, -1).reduce((sum, units) => sum + units, 0);
    if (inPlan > 0) items.set(item, { item, due: inPlan, used: used[number]!, saved: 0 });
  });
  for (const { item, unitsSaved } of moves) {
    const found = items.get(item);
    if (found) found.saved += unitsSaved;
  }
  const rows = [...items.values()].map((row) => ({
    ...row,
    used: roundUnits(row.used),
    saved: roundUnits(row.saved),
  }));
  return sortBy(rows, ({ item }) => [item]);
}
