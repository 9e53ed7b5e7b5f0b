import { groupBy } from "../fleet/group-by.ts";
import type { DeferrableLine } from "./deferrable-line.ts";
import { perUnit } from "./deferred-of.ts";
import type { ItemHarm, LinesByItem } from "./item-harm.ts";
import { prospectsOf } from "./prospects.ts";

/** Lines of a year above which those alike are put off together and in the whole. */
const MANY = 100;

/** Defers boxes of the year's lines until they cost no more than the budget, and tells what they then cost. */
export function cutToBudget(
  within: readonly DeferrableLine[],
  lines: LinesByItem,
  cap: number,
  harm: ItemHarm,
): number {
  let spend = [...new Set(within.map(({ order }) => order))].reduce((sum, { cost }) => sum + cost, 0);
  const many = within.length > MANY;
  const alike = many
    ? [...groupBy(within, (one) => `${one.key} ${one.changeBy(0)}`).values()]
    : within.map((one) => [one]);
  const prospects = prospectsOf(lines, harm, many);
  while (spend > cap) {
    const open = alike.filter((some) => some.some((one) => one.keptUnits > 0));
    if (open.length === 0) break;
    const best = open
      .map((some) => prospects.of(some, spend - cap))
      .reduce((least, one) => (perUnit(one.more, one.saves) < perUnit(least.more, least.saves) ? one : least));
    // less is left to be spared than when it was told: so much of it may be more than is needed
    if (best.saves > spend - cap && best.toSpare > spend - cap) {
      prospects.forget(best);
      continue;
    }
    prospects.putOff(best);
    spend -= best.saves;
  }
  return spend;
}
