import { SAMPLED_PATHS } from "../orders/sample-paths.ts";

/** Waiting needs of one item at one month's end. */
export interface WaitingItem {
  /** Share of them that fall on devices. */
  share: number;
  /** How many of them a device can have. */
  each: number;
  /** Units by path. */
  unmet(path: number): number;
}

/**
 * Expected devices short and the chance that any is, over the sampled paths.
 *
 * @param items    waiting needs of every item
 * @param classes  devices in service by the items (indices) that they take
 */
export function shortOnPaths(
  items: readonly WaitingItem[],
  classes: readonly { items: readonly number[]; count: number }[],
): { expected: number; anyChance: number } {
  const takers = items.map((_, index) =>
    classes.reduce((sum, one) => sum + (one.items.includes(index) ? one.count : 0), 0),
  );
  let expected = 0;
  let any = 0;
  const lacking = new Float64Array(items.length);
  for (let path = 0; path < SAMPLED_PATHS; path++) {
    let none = 1;
    for (let index = 0; index < items.length; index++) {
      const { share, each, unmet } = items[index]!;
      const units = takers[index]! > 0 ? unmet(path) : 0;
      const spared = (1 - share) ** units;
      none *= spared;
      // of more needs than devices some may all fall on a pool
      lacking[index] = units > 0 ? Math.min(1 - spared, shareShort(units * share, takers[index]!, each)) : 0;
    }
    any += 1 - none;
    if (none === 1) continue;
    for (const one of classes) {
      let complete = 1;
      for (const index of one.items) complete *= 1 - lacking[index]!;
      expected += one.count * (1 - complete);
    }
  }
  return { expected: expected / SAMPLED_PATHS, anyChance: any / SAMPLED_PATHS };
}

/**
 * Share of devices that have any of so many needs, where a device can have `each` of them and all are as likely to be any
 * device's.
 */
export function shareShort(needs: number, devices: number, each: number): number {
  let short = 0;
  for (let had = 0; had < each; had++) short += (1 - short) * Math.min(1, needs / (devices * each - had));
  return short;
}
