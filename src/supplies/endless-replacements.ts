import { firstTold } from "../fleet/first-told.ts";
import type { Needing } from "./item-places.ts";

/** Names told before the rest is counted. */
const TOLD = 5;

/**
 * A caution where nothing tells how long a new unit lasts: each is replaced once, which falls short over years.
 */
export function endlessReplacements({ items }: Pick<Needing, "items">): string[] {
  const names = items
    .filter(({ item, asPacks, places, stock }) => !asPacks && places.length > 0 && stock.length > 0 && isEndless(item))
    .map(({ item }) => item.name);
  if (names.length === 0) return [];
  return [
    `The catalogue tells no shelf life of ${firstTold(names, TOLD)}: what replaces such a unit is taken never to expire. Give shelf_months or arrives_with_months.`,
  ];
}

function isEndless({ arrivesWithMonths, shelfMonths }: Needing["items"][number]["item"]): boolean {
  return (arrivesWithMonths ?? shelfMonths) === null;
}
