import type { LotProblem } from "./lot-problem.ts";

// Above this many states over all periods the lattice is made coarser, so that the tables stay within some 50 MB.
const MOST_STATES = 8_000_000;

/** The cumulative needs on a lattice of `unit` units: state n means that n * unit units of need are covered. */
export interface NeedLattice {
  unit: number;
  states: number;
  /** Least step in which lots of so many units a box move over the lattice, in units. */
  stepOf(unitsPerBox: number): number;
  /** Cumulative need by period, in states, rounded up. */
  need: Int32Array;
  /** The last state that a lot serving up to a period can reach. */
  capAt(lastServed: number): number;
  /** Periods for which a unit beyond a lot's life is held. */
  periodsHeld(period: number, lastServed: number): number;
  /** Unit-periods that a stock covering each state spends on the shelf from period 0 on. */
  unitPeriodsFrom(): Float64Array;
  /** Takes a period that has passed out of the unit-periods. */
  passPeriod(unitPeriods: Float64Array, period: number): void;
}

/**
 * The coarsest lattice on which the problem is still exact: whole boxes where no lot lapses within the periods, since
 * then only whole boxes are ever covered; single units otherwise. Needs beyond some hundred thousand units are
 * rounded up to a coarser one.
 */
export function needLattice({ cumulativeNeed, sources, surplusAtEnd }: LotProblem): NeedLattice {
  const periods = cumulativeNeed.length;
  const last = periods - 1;
  const total = cumulativeNeed[last] ?? 0;
  const lapses = sources.some((source) => {
    return cumulativeNeed.some((_, period) => source.lastServed(period) < last && source.tiersAt(period).length > 0);
  });
  const boxes = sources.map((source) => source.unitsPerBox);
  const common = boxes.reduce((a, b) => divisor(a, b), boxes[0] ?? 1);
  const exact = lapses || (!surplusAtEnd && total % common !== 0) ? 1 : common;
  const coarser = Math.ceil((total * periods) / common / MOST_STATES);
  const unit = (total / exact) * periods > MOST_STATES ? common * coarser : exact;
  const need = Int32Array.from(cumulativeNeed, (units) => Math.ceil(units / unit));
  const states = (need[last] ?? 0) + 1;
  return {
    unit,
    states,
    stepOf: (unitsPerBox) => (unitsPerBox * unit) / divisor(unitsPerBox, unit),
    need,
    capAt: (lastServed) => need[Math.min(lastServed, last)] ?? 0,
    periodsHeld: (period, lastServed) => Math.min(lastServed, last) - period + 1,
    unitPeriodsFrom() {
      const held = new Float64Array(states);
      for (let period = 0; period < periods; period++) addHeld(held, cumulativeNeed[period]!, unit, 1);
      return held;
    },
    passPeriod: (held, period) => addHeld(held, cumulativeNeed[period]!, unit, -1),
  };
}

function addHeld(held: Float64Array, need: number, unit: number, sign: 1 | -1): void {
  for (let state = Math.ceil(need / unit); state < held.length; state++) held[state]! += sign * (state * unit - need);
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
