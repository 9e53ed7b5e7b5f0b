import { groupBy } from "../fleet/group-by.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { DeferrableLine } from "./deferrable-line.ts";
import type { ItemHarm, LinesByItem } from "./item-harm.ts";

/** Lines of a year above which those alike are put off together and in the whole. */
const MANY = 100;

interface Move {
  one: DeferrableLine;
  units: number;
}

/** What to put off next: of some lines of an item, so many units each. */
interface Prospect {
  moves: Move[];
  units: number;
  /** Device-months short of the item once it is put off, and how many more than before. */
  then: number;
  more: number;
  saves: number;
}

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
  const harmNow = new Map<string, number>();
  // what deferring brings, by what it does to the supply of an item as it stands
  const known = new Map<string, Map<string, number>>();
  const next = new Map<DeferrableLine[], Prospect>();
  const prospectOf = (some: DeferrableLine[]) => {
    let prospect = next.get(some);
    if (!prospect) {
      const { key } = some[0]!;
      const before = harmNow.get(key) ?? harm.of(key, lines);
      harmNow.set(key, before);
      const moves: Move[] = [];
      let saves = 0;
      let units = 0;
      for (const one of some) {
        const toSpare = spend - cap - saves;
        if (one.keptUnits === 0 || (units > 0 && toSpare <= 0)) continue;
        const whole = many && one.savesBy(one.keptUnits) <= toSpare;
        const move = { one, units: whole ? one.keptUnits : one.nextUnits(toSpare) };
        moves.push(move);
        saves += one.savesBy(move.units);
        units += move.units;
        // until all is told: what the next saves may hang on it
        one.deferredUnits += move.units;
      }
      const ofItem = known.get(key) ?? new Map<string, number>();
      known.set(key, ofItem);
      const change = some[0]!.changeBy(units);
      const then = ofItem.get(change) ?? harm.of(key, lines);
      ofItem.set(change, then);
      for (const move of moves) move.one.deferredUnits -= move.units;
      prospect = { moves, units, then, more: then - before, saves };
      next.set(some, prospect);
    }
    return prospect;
  };
  while (spend > cap) {
    const open = alike.filter((some) => some.some((one) => one.keptUnits > 0));
    if (open.length === 0) break;
    let best = open[0]!;
    for (const some of open) {
      const [a, b] = [prospectOf(some), prospectOf(best)];
      if (perUnit(a.more, a.saves) < perUnit(b.more, b.saves)) best = some;
    }
    const { key } = best[0]!;
    const { moves, units: all, then, more, saves } = prospectOf(best);
    for (const { one, units } of moves) {
      one.saved += one.savesBy(units);
      one.harm += more * (units / all);
      one.deferredUnits += units;
    }
    spend -= saves;
    harmNow.set(key, then);
    known.delete(key);
    const touched = new Set(moves.map(({ one }) => one.order));
    for (const some of alike) {
      if (some[0]!.key === key || some.some(({ order }) => touched.has(order))) next.delete(some);
    }
  }
  return spend;
}

/** Takes back whole delays that a later and larger one has made needless, and tells anew what the others save and harm. */
export function keepWhatFits(
  within: readonly DeferrableLine[],
  lines: LinesByItem,
  room: number,
  harm: ItemHarm,
): void {
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
}

/** Lines of which something is put off, the least harmful per unit of money first. */
export function deferredOf(within: readonly DeferrableLine[]): DeferrableLine[] {
  const deferred = within.filter((one) => one.deferredUnits > 0);
  return sortBy(deferred, (one) => [perUnit(one.harm, one.saved), -one.saved, one.line.id]);
}

/** Harm for each minor unit: what spares nothing is put off last. */
const perUnit = (harm: number, saved: number) => (saved > 0 ? harm / saved : Infinity);
