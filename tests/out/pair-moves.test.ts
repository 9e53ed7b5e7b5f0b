import { describe, expect, it } from "vitest";
import { pairMoves } from "../../src/out/pair-moves.ts";

const move = (from: string, to: string, lot: string, unitsSaved: number, by = "2026-12-01", item = "pads") => ({
  from,
  to,
  item,
  lot,
  quantity: 1,
  by,
  unitsSaved,
});

describe("pairMoves", () => {
  it("makes the two directions of an exchange one line, by the sooner day, with what both save", () => {
    expect(pairMoves([move("A", "B", "L1", 0.25), move("B", "A", "L2", 0.25, "2026-11-15")])).toEqual([
      {
        by: "2026-11-15",
        from: "A",
        to: "B",
        item: "pads",
        out: [{ lot: "L1", quantity: 1 }],
        back: [{ lot: "L2", quantity: 1 }],
        unitsSaved: 0.5,
      },
    ]);
  });

  it("keeps items apart, lists several lots, and puts what saves most first", () => {
    const lines = pairMoves([
      move("A", "B", "L1", 0.125),
      move("A", "B", "L2", 0.125),
      move("B", "A", "L3", 0.25),
      move("B", "A", "G1", 0.75, "2026-12-01", "gel"),
    ]);
    expect(lines.map(({ item, out, back, unitsSaved }) => [item, out.length, back.length, unitsSaved])).toEqual([
      ["gel", 1, 0, 0.75],
      ["pads", 2, 1, 0.5],
    ]);
  });

  it("leaves a way round three places as its three ways", () => {
    const round = [move("A", "B", "L1", 0.2), move("B", "C", "L2", 0.2), move("C", "A", "L3", 0.2)];
    expect(pairMoves(round).map(({ from, to, back }) => [from, to, back])).toEqual([
      ["A", "B", []],
      ["B", "C", []],
      ["C", "A", []],
    ]);
  });
});
