import type { Plan } from "./plan-schema.ts";

/** Tells needs of packs, which may be bought under another name than that of the packs that they replace. */
export function packNeeds({ packs }: Pick<Plan, "packs">): (row: Plan["demand"][number]) => boolean {
  const items = new Set(packs.map(({ item }) => item));
  return ({ item, causes: { fade, limit, failure } }) =>
    items.has(item) || [fade, limit, failure].some((units) => units.some((expected) => expected > 0));
}
