import type { DeferrableLine } from "./deferrable-line.ts";
import type { ItemHarm, LinesByItem } from "./item-harm.ts";

interface Move {
  one: DeferrableLine;
  units: number;
}

/** What to put off next: of some lines of an item, so many units each. */
export interface Prospect {
  some: DeferrableLine[];
  /** Minor units that were to be spared when it was told. */
  toSpare: number;
  key: string;
  moves: Move[];
  units: number;
  /** Device-months short of the item once it is put off, and how many more than before. */
  then: number;
  more: number;
  saves: number;
}

/** What putting off lines of an item would bring, as all lines stand. */
export interface Prospects {
  of: (some: DeferrableLine[], toSpare: number) => Prospect;
  putOff: (prospect: Prospect) => void;
  /** Has the prospect of the same lines told anew. */
  forget: (prospect: Prospect) => void;
}

/**
 * The prospects of lines, each told once, until something is put off that bears on it.
 *
 * @param inTheWhole  each line goes in the whole while that spares no more than is asked for
 */
export function prospectsOf(lines: LinesByItem, harm: ItemHarm, inTheWhole: boolean): Prospects {
  const harmNow = new Map<string, number>();
  // what deferring brings, by what it does to the supply of an item as it stands
  const known = new Map<string, Map<string, number>>();
  const told = new Map<DeferrableLine[], Prospect>();

  return {
    of: (some, toSpare) => {
      const prospect = told.get(some) ?? tried(some, toSpare);
      told.set(some, prospect);
      return prospect;
    },
    forget: ({ some }) => told.delete(some),
    putOff: ({ key, moves, units: all, then, more }) => {
      for (const { one, units } of moves) {
        one.saved += one.savesBy(units);
        one.harm += more * (units / all);
        one.deferredUnits += units;
      }
      harmNow.set(key, then);
      known.delete(key);
      const touched = new Set(moves.map(({ one }) => one.order));
      for (const some of told.keys()) {
        if (some[0]!.key === key || some.some(({ order }) => touched.has(order))) told.delete(some);
      }
    },
  };

  function tried(some: DeferrableLine[], toSpare: number): Prospect {
    const [first] = some as [DeferrableLine];
    const { key } = first;
    const before = harmNow.get(key) ?? harm.of(key, lines);
    harmNow.set(key, before);
    const moves: Move[] = [];
    let saves = 0;
    let units = 0;
    for (const one of some) {
      const left = toSpare - saves;
      if (one.keptUnits === 0 || (units > 0 && left <= 0)) continue;
      const whole = inTheWhole && one.savesBy(one.keptUnits) <= left;
      const move = { one, units: whole ? one.keptUnits : one.nextUnits(left) };
      moves.push(move);
      saves += one.savesBy(move.units);
      units += move.units;
      // until all is told: what the next saves may hang on it
      one.deferredUnits += move.units;
    }
    const ofItem = known.get(key) ?? new Map<string, number>();
    known.set(key, ofItem);
    const change = first.changeBy(units);
    const then = ofItem.get(change) ?? harm.of(key, lines);
    ofItem.set(change, then);
    for (const move of moves) move.one.deferredUnits -= move.units;
    return { some, toSpare, key, moves, units, then, more: then - before, saves };
  }
}
