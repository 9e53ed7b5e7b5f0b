import type { RoutineRow } from "../fleet/rows.ts";
import type { Needing } from "./item-places.ts";
import { rollMinutes } from "./paper.ts";
import { devicesOfTask, usualQuantity } from "./routine-task.ts";

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
