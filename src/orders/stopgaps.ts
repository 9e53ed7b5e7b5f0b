import type { Item, ItemBook } from "../fleet/item-book.ts";
import type { UsableLot } from "../supplies/types.ts";

/** What is at hand that could stand in for an item until a late order arrives: stock of items that serve as well. */
export function stopgapsFor(item: Item, book: ItemBook, lots: readonly UsableLot[]): string[] {
  return book.items
    .filter((other) => other !== item && (item.alternatives.has(other.key) || other.alternatives.has(item.key)))
    .map((other) => {
      const units = lots
        .filter((lot) => lot.origin === "shelf" && book.find(lot.item).key === other.key)
        .reduce((sum, lot) => sum + lot.quantity, 0);
      return units === 0 ? null : `${units} of ${other.name} on the shelf serve as well`;
    })
    .filter((clause) => clause !== null);
}
