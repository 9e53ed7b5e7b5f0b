import type { DeferrableLine } from "./deferrable-line.ts";
import { deferredOf } from "./deferred-of.ts";
import type { ItemHarm, LinesByItem } from "./item-harm.ts";

/**
 * Takes back whole delays that a later and larger one has made needless, and tells anew what the others save and harm.
 *
 * @returns the others, in the order in which they save and harm so much
 */
export function keepWhatFits(
  within: readonly DeferrableLine[],
  lines: LinesByItem,
  room: number,
  harm: ItemHarm,
): DeferrableLine[] {
  const deferred = deferredOf(within);
  const harmNow = new Map<string, number>();
  let left = room;
  for (const one of [...deferred].reverse()) {
    const costs = -one.savesBy(-one.deferredUnits);
    if (costs > left) continue;
    left -= costs;
    one.deferredUnits = 0;
    harmNow.set(one.key, 0);
  }
  const rest = deferred.map((one) => ({ one, units: one.deferredUnits })).filter(({ units }) => units > 0);
  for (const { one } of rest) one.deferredUnits = 0;
  for (const key of harmNow.keys()) harmNow.set(key, harm.of(key, lines));
  for (const { one, units } of rest) {
    one.saved = one.savesBy(units);
    one.deferredUnits = units;
    const before = harmNow.get(one.key);
    if (before === undefined) continue;
    const then = harm.of(one.key, lines);
    one.harm = then - before;
    harmNow.set(one.key, then);
  }
  return rest.map(({ one }) => one);
}
