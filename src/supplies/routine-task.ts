import type { Item } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import { rollsPerStrip } from "./paper.ts";

/** What a task takes where the sheet does not say: a check strip of a roll of paper, else one unit. */
export function usualQuantity(item: Item): number {
  return item.kind === "paper" && item.unitLengthM !== null ? rollsPerStrip(item.unitLengthM) : 1;
}

/** A task with a duty is done on every device of that duty; one without, on every device that takes the item. */
export function devicesOfTask(duty: string | null, takes: WhoTakes, item: Item): string[] {
  if (duty === null) return takes.takers(item).map((taker) => taker.key);
  const wanted = nameKey(duty);
  return [...takes.devices].filter(([, { duty }]) => duty !== null && nameKey(duty) === wanted).map(([key]) => key);
}
