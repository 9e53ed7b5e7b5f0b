import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { type Candidate, listMoves } from "../../src/supplies/move-list.ts";
import { roundsOf } from "../../src/supplies/move-rounds.ts";
import { day, device, stock } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");
const policy = defaultPolicy(asOf);
const [SOON, LATE] = [asOf + 100, asOf + 700];

/** A place with a unit of one day, whose value is stated for the two days it can end with. */
function candidate(name: string, has: number, value: { soon: number; late: number }): Candidate {
  const facts = device(name);
  const ofDay = (days: readonly number[]) => days.reduce((sum, at) => sum + (at === SOON ? value.soon : value.late), 0);
  return {
    place: { key: name, device: facts } as Candidate["place"],
    rows: [{ row: stock("Pads", "2027-12-31", name, { lot: `of ${name}` }), day: has }],
    search: { days: [has], value: ofDay, expectedUses: () => 0 },
  };
}

const quiet = (name: string) => candidate(name, SOON, { soon: 0.1, late: 0.6 });
// By hand: the quiet place gains 0.5 by the later unit; each busy one loses 0.1 or 0.35 by the sooner
const busy = (name: string, soon: number) => candidate(name, LATE, { soon, late: 0.9 });

describe("listMoves", () => {
  it("shares evenly what an exchange saves as a whole", () => {
    const moves = listMoves([quiet("A"), busy("B", 0.8)], [[LATE], [SOON]], 0.1, policy);
    expect(moves.map(({ from, to, lot, quantity }) => [from, to, lot, quantity])).toEqual([
      ["A", "B", "of A", 1],
      ["B", "A", "of B", 1],
    ]);
    for (const { unitsSaved } of moves) expect(unitsSaved).toBeCloseTo(0.2, 12);
  });

  it("leaves out an exchange that saves no more than it costs, and keeps the others as they are", () => {
    const candidates = [quiet("A"), busy("B", 0.55), quiet("C"), busy("D", 0.8)];
    const after = [[LATE], [SOON], [LATE], [SOON]];
    // A gives to the first place that takes: with B 0.5 - 0.35 = 0.15, less than the 0.2 that two units cost
    expect(listMoves(candidates, after, 0.1, policy).map(({ from, to }) => [from, to])).toEqual([
      ["C", "D"],
      ["D", "C"],
    ]);
    expect(listMoves(candidates, after, 0.05, policy)).toHaveLength(4);
  });
});

describe("roundsOf", () => {
  it("joins places however far around, and keeps apart those that share none", () => {
    const leg = (from: number, to: number) => ({ from, to, day: SOON });
    const legs = [leg(0, 1), leg(4, 5), leg(2, 3), leg(5, 4), leg(1, 2), leg(3, 0)];
    expect(roundsOf(legs)).toEqual([
      [leg(0, 1), leg(2, 3), leg(1, 2), leg(3, 0)],
      [leg(4, 5), leg(5, 4)],
    ]);
    expect(roundsOf([])).toEqual([]);
  });
});
