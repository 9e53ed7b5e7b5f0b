import { describe, expect, it } from "vitest";
import { SpanSpread } from "../../src/demand/span-spread.ts";

/** New packs that outlast the plan. */
const FOR_GOOD = Float64Array.of(0, 0, 0, 0);

/** Cumulants of a need that comes with a chance or not, by its chance: p q, p q (q - p), p q (1 - 6 p q). */
const ofOne = (p: number) => [p * (1 - p), p * (1 - p) * (1 - 2 * p), p * (1 - p) * (1 - 6 * p * (1 - p))];

function expectSpread(spread: SpanSpread, [after, through]: [number, number], mean: number, cumulants: number[]) {
  const { variance, third, fourth } = spread.perNeed(after, through);
  [variance, third, fourth].forEach((found, at) => {
    expect(found).toBeCloseTo(cumulants[at]! / mean, 12);
  });
}

describe("SpanSpread", () => {
  // By hand: first needs have come with chances 0.1, 0.4 and 0.8 by the months' ends, so 0.3 in the second, 0.7 in the last two
  it("is that of a need that comes in the span or not", () => {
    const spread = new SpanSpread(3);
    spread.add(Float64Array.of(0.1, 0.4, 0.8), FOR_GOOD, 3);
    expectSpread(spread, [0, 1], 0.3, ofOne(0.3));
    expectSpread(spread, [0, 2], 0.7, ofOne(0.7));
    expectSpread(spread, [-1, 2], 0.8, ofOne(0.8));
  });

  // By hand: the device leaves before the third month; of the span's needs those of the second stay
  it("ends with the slot", () => {
    const spread = new SpanSpread(3);
    spread.add(Float64Array.of(0.1, 0.4, 0.8), FOR_GOOD, 2);
    expectSpread(spread, [0, 2], 0.3, ofOne(0.3));
    expect(spread.perNeed(1, 2)).toEqual({ variance: 0, third: 0, fourth: 0 });
  });

  // By hand: cumulants of independent needs add up, and so do means
  it("adds slots up before it is put in proportion", () => {
    const spread = new SpanSpread(3);
    spread.add(Float64Array.of(0.5, 0.5, 0.5), FOR_GOOD, 3);
    spread.add(Float64Array.of(0.1, 0.1, 0.1), FOR_GOOD, 3);
    const [half, tenth] = [ofOne(0.5), ofOne(0.1)];
    expectSpread(
      spread,
      [-1, 0],
      0.6,
      half.map((cumulant, at) => cumulant + tenth[at]!),
    );
    expect(spread.perNeed(0, 2).variance).toBe(0);
  });

  // By hand: due in the first month for certain, and every month anew: three needs for certain. Where a pack's life ends
  // after one month with a chance of 0.5, else not, the first two months take 1, or 2 with a chance of 0.5
  it("counts renewals", () => {
    const certain = new SpanSpread(3);
    certain.add(Float64Array.of(1, 1, 1), Float64Array.of(0, 1, 1, 1), 3);
    expectSpread(certain, [-1, 2], 3, [0, 0, 0]);
    const half = new SpanSpread(3);
    half.add(Float64Array.of(1, 1, 1), Float64Array.of(0, 0.5, 0.5, 0.5), 3);
    expectSpread(half, [-1, 1], 1.5, ofOne(0.5));
  });

  it("keeps what it was told, though the caller uses its arrays again", () => {
    const spread = new SpanSpread(3);
    const due = Float64Array.of(0.5, 0.5, 0.5);
    spread.add(due, FOR_GOOD, 3);
    due.fill(1);
    expectSpread(spread, [-1, 0], 0.5, ofOne(0.5));
  });
});
