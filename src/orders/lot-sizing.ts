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
  const size = lattice.states;
  const tables: Choice[] = [];
  let cost = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  cost[0] = 0;
  const heldLater = lattice.unitPeriodsFrom();
  for (let period = 0; period < lattice.need.length; period++) {
    const next = Float64Array.from(cost);
    const choice = { from: new Int32Array(size).fill(-1), units: new Int32Array(size), source: new Uint8Array(size) };
    problem.sources.forEach((source, index) => {
      const tiers = source.tiersAt(period);
      const end = lattice.capAt(period, source.lastServed(period));
      tiers.forEach((tier, rank) => {
        const below = tiers[rank + 1]?.fromUnits ?? Number.POSITIVE_INFINITY;
        const boxes = boxRange(tier, below, source.unitsPerBox);
        if (boxes.most < boxes.least) return;
        const step = { cost, next, choice, index, tier, boxes, box: source.unitsPerBox, end, heldLater, lattice };
        extendWithinLife(step);
        if (end < size - 1 || problem.surplusAtEnd) {
          extendPastLife(step, lattice.periodsHeld(period, source.lastServed(period)));
        }
      });
    });
    next.fill(Number.POSITIVE_INFINITY, 0, lattice.need[period]!);
    lattice.passPeriod(heldLater, period);
    tables.push(choice);
    cost = next;
  }
  return traceBack(problem, lattice, tables, cost[size - 1]!);
}

interface Choice {
  from: Int32Array;
  units: Int32Array;
  source: Uint8Array;
}

interface Step {
  cost: Float64Array;
  next: Float64Array;
  choice: Choice;
  index: number;
  tier: LotTier;
  boxes: { least: number; most: number };
  box: number;
  /** The state at which the lot's life ends. */
  end: number;
  heldLater: Float64Array;
  lattice: NeedLattice;
}

function boxRange(tier: LotTier, below: number, box: number): { least: number; most: number } {
  return { least: Math.max(1, Math.ceil(tier.fromUnits / box)), most: Math.ceil(below / box) - 1 };
}

/** Lots that are used up within their life: for each state the best earlier state in reach, by a sliding minimum. */
function extendWithinLife({ cost, next, choice, index, tier, boxes, box, end, heldLater, lattice }: Step): void {
  const stride = box / lattice.unit;
  const base = (state: number) =>
    cost[state]! - tier.unitCost * state * lattice.unit - tier.holdingCost * heldLater[state]!;
  const queue: number[] = [];
  for (let rest = 0; rest < Math.min(stride, end + 1); rest++) {
    queue.length = 0;
    let head = 0;
    for (let to = rest + boxes.least * stride; to <= end; to += stride) {
      const entering = to - boxes.least * stride;
      if (Number.isFinite(cost[entering]!)) {
        while (queue.length > head && base(queue[queue.length - 1]!) > base(entering)) queue.pop();
        queue.push(entering);
      }
      while (head < queue.length && to - queue[head]! > boxes.most * stride) head++;
      if (head === queue.length) continue;
      const from = queue[head]!;
      const total = base(from) + tier.lotCost + tier.unitCost * to * lattice.unit + tier.holdingCost * heldLater[to]!;
      if (total < next[to]!) record(next, choice, to, from, (to - from) * lattice.unit, index, total);
    }
  }
}

/** Lots larger than their life can use: the least such lot from each state; the rest lapses, or is left at the end. */
function extendPastLife(step: Step, periodsHeld: number): void {
  const { cost, next, choice, index, tier, boxes, box, end, heldLater, lattice } = step;
  for (let from = 0; from < end; from++) {
    if (!Number.isFinite(cost[from]!)) continue;
    const usable = (end - from) * lattice.unit;
    const count = Math.max(boxes.least, Math.floor(usable / box) + 1);
    if (count > boxes.most) continue;
    const units = count * box;
    const held = heldLater[end]! - heldLater[from]! + (units - usable) * periodsHeld;
    const total = cost[from]! + tier.lotCost + tier.unitCost * units + tier.holdingCost * held;
    if (total < next[end]!) record(next, choice, end, from, units, index, total);
  }
}

function record(
  next: Float64Array,
  choice: Choice,
  to: number,
  from: number,
  units: number,
  source: number,
  total: number,
): void {
  next[to] = total;
  choice.from[to] = from;
  choice.units[to] = units;
  choice.source[to] = source;
}

function traceBack(problem: LotProblem, lattice: NeedLattice, tables: Choice[], cost: number): LotPlan | null {
  if (!Number.isFinite(cost)) return null;
  const lots: Lot[] = [];
  let state = lattice.states - 1;
  for (let period = tables.length - 1; period >= 0; period--) {
    const { from, units, source } = tables[period]!;
    const before = from[state]!;
    if (before < 0) continue;
    const bought = units[state]!;
    const lapses = problem.sources[source[state]!]!.lastServed(period) < tables.length - 1;
    lots.push({
      period,
      source: source[state]!,
      units: bought,
      coveredBefore: before * lattice.unit,
      coveredAfter: state * lattice.unit,
      lapsing: lapses ? Math.max(0, bought - (state - before) * lattice.unit) : 0,
    });
    state = before;
  }
  return { cost, lots: lots.reverse() };
}
