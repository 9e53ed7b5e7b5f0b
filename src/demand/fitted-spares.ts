import type { EnteringPack, PackNeeds } from "./pack-needs.ts";

/**
 * Spares that will have been fitted when they are due themselves: those of a month as far as there were needs before it. It
 * may be a need in the place of another spare, which was due sooner, that one of them meets.
 *
 * @param dueIn  months from as-of's
 */
export function fittedSpares(dueIn: readonly number[], { causes }: PackNeeds): EnteringPack[] {
  let needs = 0;
  const before = causes.fade!.map((_, month) => {
    const sum = needs;
    for (const units of Object.values(causes)) needs += units[month]!;
    return sum;
  });
  return dueIn.flatMap((enters) => {
    const chance = Math.min(1, before[enters]!);
    before[enters]! -= chance;
    // its own replacement is counted with the pack whose place it took
    return chance > 0 ? [{ enters, chance, cause: "limit", end: enters + 1 }] : [];
  });
}
