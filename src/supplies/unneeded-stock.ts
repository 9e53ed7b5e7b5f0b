import { counted } from "../fleet/count-text.ts";
import { firstTold } from "../fleet/first-told.ts";
import type { Needing } from "./item-places.ts";

/** Names told before the rest is counted. */
const TOLD = 5;

/**
 * A caution where there is stock of items that no place needs, as in a stock list alone: it lies on shelves, and nothing
 * would be bought when it expires.
 */
export function unneededStock({ items }: Pick<Needing, "items">): string[] {
  const unneeded = items.filter(
    ({ asPacks, places, stock, units }) => !asPacks && places.length === 0 && units.unitsOf(stock) > 0,
  );
  if (unneeded.length === 0) return [];
  const units = unneeded.reduce((sum, { stock, units: of }) => sum + of.unitsOf(stock), 0);
  const names = unneeded.map(({ item }) => item.name);
  return [
    `The sheets name nothing that needs ${firstTold(names, TOLD)}: no device carries them, no use is logged and no task takes them. ` +
      `This stock, ${counted(units, "unit")}, counts as lying on shelves, and none is replaced when it expires. ` +
      "If they are carried, list what carries them (a device, a bag, a vehicle) as devices, or log their use.",
  ];
}
