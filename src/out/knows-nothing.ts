import type { Plan } from "./plan-schema.ts";

/**
 * Whether a plan rests on nothing that could be needed: no pack with a forecast, no device with dated units and no use
 * was read. That such a plan orders nothing is no all-clear, and must not be told as one.
 */
export function knowsNothing({ packs, datedStock, demand, orders, short }: Plan): boolean {
  if (orders.length > 0 || packs.some(({ replaceBy }) => replaceBy.kind !== "no-forecast")) return false;
  if (datedStock.length > 0 && short.some(({ devices }) => devices > 0)) return false;
  return demand.every(({ mean }) => mean.every((needs) => needs === 0));
}
