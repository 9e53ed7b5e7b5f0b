import type { Lot, LotPlan, LotProblem, LotTier } from "./lot-problem.ts";
import { type NeedLattice, needLattice } from "./need-lattice.ts";

/**
 * The cheapest lots that meet every period's needs in time: exact dynamic programming on the cumulative needs covered.
 *
 * Lots are used first in, first out, so what a lot will serve is known when it is bought: it starts where the lots
 * before it end and stops at its size or at the needs of the last period of its life, whichever comes first; what is
 * beyond lapses. One number, the cumulative need covered so far, is therefore the whole state, and holding is charged
 * at the purchase. Fees, prices, minimum orders, boxes, all-units price breaks and lives may differ by period and source.
 * Time grows with periods * tiers * units needed.
 *
 * Exact for lots that lapse in the order of their arrival; where sources differ in life, a younger lot that lapses
 * first is still used second (safe, at worst a little dear).
 *
 * @returns the plan, or null where no lots can meet the needs
 * @see Wagner, H. M. & Whitin, T. M. (1958), Management Science 5(1), 89-96, for fees and holding alone; state and
 *      the other features are ours
 */
export function planLots(problem: LotProblem): LotPlan | null {
  const lattice = needLattice(problem);
  const periods = lattice.need.length;
  const table = emptyTable(periods, lattice.states);
  let cost = new Float64Array(lattice.states).fill(Number.POSITIVE_INFINITY);
  let next = new Float64Array(lattice.states);
  cost[0] = 0;
  const heldLater = lattice.unitPeriodsFrom();
  const room = { queue: new Int32Array(lattice.states + 1), worth: new Float64Array(lattice.states + 1) };
  for (let period = 0; period < periods; period++) {
    next.set(cost);
    const first = period === 0 ? 0 : lattice.need[period - 1]!;
    problem.sources.forEach((source, index) => {
      const tiers = source.tiersAt(period);
      if (tiers.length === 0) return;
      const lastServed = source.lastServed(period);
      const end = lattice.capAt(lastServed);
      const box = lattice.stepOf(source.unitsPerBox);
      for (let rank = 0; rank < tiers.length; rank++) {
        const tier = tiers[rank]!;
        const boxes = boxRange(tier, tiers[rank + 1]?.fromUnits ?? Number.POSITIVE_INFINITY, box);
        if (boxes.most < boxes.least) continue;
        const step = { period, index, tier, boxes, box, first, end, cost, next, heldLater, room };
        extendWithinLife(step, lattice.unit, table);
        if (end < lattice.states - 1 || problem.surplusAtEnd) {
          extendPastLife(step, lattice.unit, lattice.periodsHeld(period, lastServed), table);
        }
      }
    });
    next.fill(Number.POSITIVE_INFINITY, 0, lattice.need[period]!);
    lattice.passPeriod(heldLater, period);
    [cost, next] = [next, cost];
  }
  return traceBack(problem, lattice, table, cost[lattice.states - 1]!);
}

/** How each state was reached in each period; entries are at period * states + state. */
interface Table {
  states: number;
  /** The state before the lot; -1 = no lot. */
  from: Int32Array;
  /** Twice the source, plus one where the lot goes past its life. */
  how: Uint16Array;
  /** Sizes of the lots that go past their life. */
  pastLife: Map<number, number>;
}

interface Step {
  period: number;
  index: number;
  tier: LotTier;
  boxes: { least: number; most: number };
  box: number;
  /** The first state that meets the needs before the period. */
  first: number;
  /** The state at which the lot's life ends. */
  end: number;
  cost: Float64Array;
  next: Float64Array;
  heldLater: Float64Array;
  /** Room for a queue of states. */
  room: { queue: Int32Array; worth: Float64Array };
}

/** Entries up to which the room of the last table is used again: a search sizes the same items hundreds of times. */
const ENTRIES_KEPT = 1 << 19;
const kept = { from: new Int32Array(0), how: new Uint16Array(0) };

function emptyTable(periods: number, states: number): Table {
  const entries = periods * states;
  if (entries > ENTRIES_KEPT) {
    return { states, from: new Int32Array(entries).fill(-1), how: new Uint16Array(entries), pastLife: new Map() };
  }
  if (kept.from.length < entries) {
    kept.from = new Int32Array(entries);
    kept.how = new Uint16Array(entries);
  }
  return { states, from: kept.from.fill(-1, 0, entries), how: kept.how, pastLife: new Map() };
}

function boxRange(tier: LotTier, below: number, box: number): { least: number; most: number } {
  return { least: Math.max(1, Math.ceil(tier.fromUnits / box)), most: Math.ceil(below / box) - 1 };
}

/** Lots that are used up within their life: for each state the best earlier state in reach, by a sliding minimum. */
function extendWithinLife(step: Step, unit: number, table: Table): void {
  const { period, index, tier, boxes, box, first, end, cost, next, heldLater } = step;
  const { unitCost, lotCost, holdingCost } = tier;
  // a queue of earlier states with rising cost, its head the best one in reach
  const { queue, worth } = step.room;
  const stride = box / unit;
  const nearest = boxes.least * stride;
  const farthest = boxes.most * stride;
  for (let rest = 0; rest < stride; rest++) {
    let head = 0;
    let tail = 0;
    for (let to = first + rest + nearest; to <= end; to += stride) {
      const entering = to - nearest;
      const base = cost[entering]! - unitCost * entering * unit - holdingCost * heldLater[entering]!;
      if (base < Number.POSITIVE_INFINITY) {
        while (tail > head && worth[tail - 1]! > base) tail--;
        queue[tail] = entering;
        worth[tail++] = base;
      }
      while (head < tail && to - queue[head]! > farthest) head++;
      if (head === tail) continue;
      const total = worth[head]! + lotCost + unitCost * to * unit + holdingCost * heldLater[to]!;
      if (total < next[to]!) {
        next[to] = total;
        table.from[period * table.states + to] = queue[head]!;
        table.how[period * table.states + to] = 2 * index;
      }
    }
  }
}

/** Lots larger than their life can use: the least such lot from each state; the rest lapses, or is left at the end. */
function extendPastLife(step: Step, unit: number, periodsHeld: number, table: Table): void {
  const { period, index, tier, boxes, box, first, end, cost, next, heldLater } = step;
  const entry = period * table.states + end;
  for (let from = first; from < end; from++) {
    if (cost[from]! === Number.POSITIVE_INFINITY) continue;
    const usable = (end - from) * unit;
    const count = Math.max(boxes.least, Math.floor(usable / box) + 1);
    if (count > boxes.most) continue;
    const units = count * box;
    const held = heldLater[end]! - heldLater[from]! + (units - usable) * periodsHeld;
    const total = cost[from]! + tier.lotCost + tier.unitCost * units + tier.holdingCost * held;
    if (total >= next[end]!) continue;
    next[end] = total;
    table.from[entry] = from;
    table.how[entry] = 2 * index + 1;
    table.pastLife.set(entry, units);
  }
}

function traceBack(problem: LotProblem, lattice: NeedLattice, table: Table, cost: number): LotPlan | null {
  if (!Number.isFinite(cost)) return null;
  const last = lattice.need.length - 1;
  const lots: Lot[] = [];
  let state = lattice.states - 1;
  for (let period = last; period >= 0; period--) {
    const entry = period * table.states + state;
    const before = table.from[entry]!;
    if (before < 0) continue;
    const used = (state - before) * lattice.unit;
    const source = table.how[entry]! >> 1;
    const units = table.how[entry]! % 2 === 1 ? table.pastLife.get(entry)! : used;
    const lapses = problem.sources[source]!.lastServed(period) < last;
    lots.push({
      period,
      source,
      units,
      coveredBefore: before * lattice.unit,
      coveredAfter: state * lattice.unit,
      lapsing: lapses ? Math.max(0, units - used) : 0,
    });
    state = before;
  }
  return { cost, lots: lots.reverse() };
}
