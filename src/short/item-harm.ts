import { groupBy } from "../fleet/group-by.ts";
import type { UsableLot } from "../supplies/types.ts";
import type { DeferrableLine } from "./deferrable-line.ts";
import type { ShortModel } from "./short-model.ts";
import type { SupplyMonths } from "./unmet-needs.ts";

/** Lines by the key of their item. */
export type LinesByItem = ReadonlyMap<string, readonly DeferrableLine[]>;

export const linesByItem = (lines: readonly DeferrableLine[]): LinesByItem => groupBy(lines, ({ key }) => key);

/** Device-months short of an item alone, for the lines as they stand. */
export class ItemHarm {
  private readonly stock = new Map<string, SupplyMonths[]>();
  private readonly itemOf: Map<string, number>;

  constructor(
    private readonly model: ShortModel,
    stock: ReadonlyMap<string, readonly UsableLot[]>,
  ) {
    this.itemOf = new Map(model.items.map((key, index) => [key, index]));
    for (const [key, lots] of stock) this.stock.set(key, model.spans(lots));
  }

  supplyOf(key: string, lines: LinesByItem): SupplyMonths[] {
    return [...(this.stock.get(key) ?? []), ...(lines.get(key) ?? []).flatMap((one) => one.spans())];
  }

  of(key: string, lines: LinesByItem): number {
    const item = this.itemOf.get(key);
    if (item === undefined) return 0;
    return this.model.deviceMonths(item, this.model.waiting(item, this.supplyOf(key, lines)));
  }
}
