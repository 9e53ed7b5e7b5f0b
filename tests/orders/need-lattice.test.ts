import { describe, expect, it } from "vitest";
import type { LotSource } from "../../src/orders/lot-problem.ts";
import { needLattice } from "../../src/orders/need-lattice.ts";

function source(unitsPerBox: number, lastServed: (period: number) => number = () => 2): LotSource {
  const tier = { fromUnits: 1, unitCost: 1, lotCost: 0, holdingCost: 0 };
  return { unitsPerBox, tiersAt: () => [tier], lastServed };
}

const NEEDS = [3, 3, 7];

describe("needLattice", () => {
  /*
   * By hand: of boxes of 5, one covers the 3 of both first periods and two the 7. One box has 2 left after each of the first
   * two and has gone before the third; two boxes have 7, 7 and 3 left.
   */
  it("counts in whole boxes where nothing lapses", () => {
    const lattice = needLattice({ cumulativeNeed: NEEDS, sources: [source(5)], surplusAtEnd: true });
    expect([lattice.unit, lattice.states, ...lattice.need]).toEqual([5, 3, 1, 1, 2]);
    const held = lattice.unitPeriodsFrom();
    expect([...held]).toEqual([0, 4, 17]);
    lattice.passPeriod(held, 0);
    expect([...held]).toEqual([0, 2, 10]);
    expect([lattice.capAt(0), lattice.capAt(2), lattice.capAt(9)]).toEqual([1, 2, 2]);
    expect([lattice.periodsHeld(1, 1), lattice.periodsHeld(1, 9)]).toEqual([1, 2]);
  });

  // By hand: 4 and 6 have 2 in common; a box of either moves by itself
  it("counts in what the boxes of all sources have in common", () => {
    const lattice = needLattice({ cumulativeNeed: [5, 8], sources: [source(4), source(6)], surplusAtEnd: true });
    expect([lattice.unit, ...lattice.need, lattice.stepOf(4), lattice.stepOf(6)]).toEqual([2, 3, 4, 4, 6]);
  });

  it("counts single units where a lot lapses, or where none may be left and boxes do not add up to the need", () => {
    const unit = (one: LotSource, surplusAtEnd: boolean) =>
      needLattice({ cumulativeNeed: NEEDS, sources: [one], surplusAtEnd }).unit;
    const lapsing = source(5, (period) => Math.min(2, period + 1));
    expect([unit(lapsing, true), unit(source(5), false), unit(source(7), false)]).toEqual([1, 1, 7]);
    // a source that lapses, but from which nothing can be had then
    expect(unit({ ...lapsing, tiersAt: (period) => (period === 0 ? [] : source(5).tiersAt(period)) }, true)).toBe(5);
  });

  it("is coarser only where there would be more states than may be", () => {
    const unit = (needed: number) =>
      needLattice({ cumulativeNeed: [0, needed], sources: [source(1)], surplusAtEnd: true }).unit;
    expect([unit(4_000_000), unit(4_000_001)]).toEqual([1, 2]);
  });

  // By hand: 9 million units over 2 periods are 18 million states, more than twice the 8 million there may be
  it("is three times as coarse where there would be more than twice as many states as may be", () => {
    const lattice = needLattice({ cumulativeNeed: [0, 9_000_000], sources: [source(1)], surplusAtEnd: true });
    expect([lattice.unit, lattice.states]).toEqual([3, 3_000_001]);
    // what moves in boxes of 2 moves over it by 6 units
    expect(lattice.stepOf(2)).toBe(6);
  });

  it("has one state where nothing is needed", () => {
    const lattice = needLattice({ cumulativeNeed: [], sources: [], surplusAtEnd: true });
    expect([lattice.states, lattice.capAt(3), ...lattice.unitPeriodsFrom()]).toEqual([1, 0, 0]);
  });
});
