import { describe, expect, it } from "vitest";
import { heldLives, needsOfFewPacks } from "../../src/demand/few-packs.ts";
import { needsOfFutures } from "../../src/demand/futures-needs.ts";
import { needsOfManyPacks } from "../../src/demand/many-packs.ts";
import type { SlotStream } from "../../src/demand/slot-stream.ts";
import type { SpanNeeds } from "../../src/demand/span-needs.ts";

/** Smallest count met with a chance, read off the distribution. */
function quantileOf(counts: Float64Array, level: number): number {
  let below = 0;
  return counts.findIndex((chance) => {
    below += chance;
    return below >= level - 1e-9;
  });
}

const mean = (counts: Float64Array) => counts.reduce((sum, chance, n) => sum + n * chance, 0);
const total = (counts: Float64Array) => counts.reduce((sum, chance) => sum + chance, 0);

/** 240 packs, some due sooner than others, under two draws of which one is a quarter faster. */
const stream: SlotStream = {
  slots: 240,
  draws: 2,
  months: 12,
  newDue: new Float64Array(2 * 13).map((_, at) => Math.min(1, ((at % 13) / 30) * (at < 13 ? 1 : 1.25))),
  endOf: (slot) => (slot % 10 === 0 ? 7 : 12),
  addDueOf(slots, into, everyDraw = 1) {
    for (const slot of slots) {
      for (let at = 0; at < into.length; at++) {
        const [draw, month] = [Math.floor(at / 12) * everyDraw, at % 12];
        into[at] = into[at]! + Math.min(1, ((month + 1) / (20 + (slot % 40))) * (1 + draw / 4));
      }
    }
  },
};
const lives = heldLives(stream);
const many = needsOfManyPacks(stream);
const SPANS: [number, number][] = [
  [-1, 0],
  [-1, 11],
  [3, 8],
];

describe("countsIn of many packs", () => {
  it.each(SPANS)("after %i through %i: a distribution with the quantiles that quantileIn gives", (after, through) => {
    const counts = many.countsIn(after, through);
    expect(total(counts)).toBeCloseTo(1, 9);
    for (const level of [0.1, 0.4, 0.8, 0.95, 0.99]) {
      expect(many.quantileIn(after, through, level)).toBe(quantileOf(counts, level));
    }
  });
  it.each(SPANS)("after %i through %i: close to the sum of packs taken one by one", (after, through) => {
    const [counts, exact] = [many.countsIn(after, through), needsOfFewPacks(lives).countsIn(after, through)];
    expect(mean(counts)).toBeCloseTo(mean(exact), 1);
    let [ours, theirs, farthest] = [0, 0, 0];
    for (let n = 0; n < Math.max(counts.length, exact.length); n++) {
      ours += counts[n] ?? 0;
      theirs += exact[n] ?? 0;
      farthest = Math.max(farthest, Math.abs(ours - theirs));
    }
    expect(farthest).toBeLessThan(0.01);
  });
});

describe("needsOfFutures", () => {
  // Four futures over two months
  const needs: SpanNeeds = needsOfFutures(Int32Array.of(0, 1, 2, 0, 2, 2, 5, 0), 4, 2);
  // By hand: both months take 1, 2, 4 and 5; the first alone 0, 2, 2 and 5; the second alone 1, 0, 2 and 0
  it("counts what each span takes in how many futures", () => {
    expect([...needs.countsIn(-1, 1)]).toEqual([0, 0.25, 0.25, 0, 0.25, 0.25]);
    expect([...needs.countsIn(-1, 0)]).toEqual([0.25, 0, 0.5, 0, 0, 0.25]);
    expect([...needs.countsIn(0, 1)]).toEqual([0.5, 0.25, 0.25]);
  });
  it("has the quantiles of what it counts", () => {
    for (const [after, through] of [
      [-1, 1],
      [-1, 0],
      [0, 1],
    ] as const) {
      for (const level of [0.2, 0.25, 0.5, 0.75, 0.9, 1]) {
        expect(needs.quantileIn(after, through, level)).toBe(quantileOf(needs.countsIn(after, through), level));
      }
    }
  });
  it("adds one whole future to a path", () => {
    const path = Int32Array.of(10, 10);
    needs.addPath(0, () => 0.6, path);
    expect([...path]).toEqual([12, 12]);
  });
});
