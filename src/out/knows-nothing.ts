import type { Plan } from "./plan-schema.ts";

/**
 * Whether a plan rests on nothing that could be needed: no pack, no dated unit and no use was read. That such a plan
 * orders nothing is no all-clear, and must not be told as one.
 */
export function knowsNothing({ packs, datedStock, demand, orders }: Plan): boolean {
  if (packs.length + datedStock.length + orders.length > 0) return false;
  return demand.every(({ mean }) => mean.every((needs) => needs === 0));
}
