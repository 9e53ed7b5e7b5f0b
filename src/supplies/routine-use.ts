import type { Item } from "../fleet/item-book.ts";
import { nameKey, type RoutineRow } from "../fleet/rows.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import type { Needing } from "./item-places.ts";
import { rollMinutes, rollsPerStrip } from "./paper.ts";

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

/** What a task of the routine uses of an item. */
export interface RoutineUse {
  item: string;
  task: string;
  /** null where the task is done on every device that takes the item. */
  duty: string | null;
  devices: number;
  perYear: number;
  /** Units of the item each time; a share of a roll of paper. */
  quantity: number;
  /** True where the sheet gives no quantity, and common practice is taken: one unit, or a check strip of paper. */
  assumed: boolean;
  /** Of all devices. */
  unitsPerYear: number;
  /** Minutes of trace on a roll of paper; null for anything else. */
  minutesPerRoll: number | null;
}

/** The tasks that use an item, as the plan counts them; packs' cycles are no part of it. */
export function routineUses(routine: readonly RoutineRow[], { book, takes, items }: Needing): RoutineUse[] {
  const asPacks = new Set(items.filter((ofItem) => ofItem.asPacks).map(({ item }) => item.key));
  return routine.flatMap(({ task, perYear, duty, item: name, quantity: given }) => {
    const item = name === null ? null : book.find(name);
    if (item === null || asPacks.has(item.key)) return [];
    const devices = devicesOfTask(duty, takes, item).length;
    const quantity = given ?? usualQuantity(item);
    const minutesPerRoll = item.kind === "paper" && item.unitLengthM !== null ? rollMinutes(item.unitLengthM) : null;
    const unitsPerYear = devices * perYear * quantity;
    return [
      {
        item: item.name,
        task,
        duty,
        devices,
        perYear,
        quantity,
        assumed: given === null,
        unitsPerYear,
        minutesPerRoll,
      },
    ];
  });
}
