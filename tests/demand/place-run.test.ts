import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PlaceRunner } from "../../src/demand/place-run.ts";

const MONTHS = 24;
const facts = {
  monthStarts: Float64Array.from({ length: MONTHS + 1 }, (_, m) => m * 30),
  // new units last ten months from the end of their month
  fitted: Array.from({ length: MONTHS }, (_, m) => [{ upTo: Number.POSITIVE_INFINITY, swapDay: (m + 11) * 30 }]),
};

const NO_OTHERS = new Int32Array(MONTHS);

/**
 * The same place told step by step, with the rule of the World Health Organization's good distribution practices, "first
 * expired, first out": stock with the earliest expiry date is used before the same item with a later one.
 */
function stepByStep(
  swapDays: readonly number[],
  uses: readonly { day: number; taken: number }[],
): { needs: number[]; fefoKept: boolean } {
  const units = [...swapDays];
  const needs = new Array<number>(MONTHS).fill(0);
  let fefoKept = true;
  for (let day = 0; day < MONTHS * 30; day++) {
    const month = Math.floor(day / 30);
    const takeOut = (unit: number) => {
      if (units.some((other) => other < unit)) fefoKept = false;
      units.splice(units.indexOf(unit), 1);
      units.push((month + 11) * 30);
      needs[month] = needs[month]! + 1;
    };
    for (const due of units.filter((unit) => unit <= day).sort((a, b) => a - b)) takeOut(due);
    for (const use of uses) {
      if (Math.floor(use.day) !== day) continue;
      for (let unit = 0; unit < use.taken; unit++) {
        if (units.length > 0) takeOut(Math.min(...units));
        else needs[month] = needs[month]! + 1;
      }
    }
  }
  return { needs, fefoKept };
}

describe("PlaceRunner", () => {
  const runner = new PlaceRunner(facts);

  it("takes the unit that expires first, and replaces it, as told day by day", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 900 }), { maxLength: 5 }),
        fc.array(fc.tuple(fc.integer({ min: 0, max: MONTHS * 30 - 1 }), fc.integer({ min: 0, max: 9 })), {
          maxLength: 30,
        }),
        (swapDays, usesDrawn) => {
          const uses = usesDrawn.map(([day, taken]) => ({ day: day + 0.5, taken })).sort((a, b) => a.day - b.day);
          const told = stepByStep(swapDays, uses);
          expect(told.fefoKept).toBe(true);
          const place = {
            from: 0,
            until: Number.POSITIVE_INFINITY,
            swapDays: [...swapDays].sort((a, b) => a - b),
            lacking: 0,
            before: NO_OTHERS,
          };
          runner.run(
            place,
            {
              count: uses.length,
              days: Float64Array.from(uses, ({ day }) => day),
              units: Int32Array.from(uses, ({ taken }) => taken),
            },
            [],
          );
          expect([...runner.needs]).toEqual(told.needs);
        },
      ),
      { seed: 41, numRuns: 200 },
    );
  });

  // By hand: what the place cannot hold is needed at once; the two units that it holds are new from then on
  it("ends however many units a slip of the pen says were used at once", () => {
    const place = { from: 0, until: 600, swapDays: [50, 700], lacking: 0, before: NO_OTHERS };
    runner.run(place, { count: 1, days: Float64Array.of(40), units: Int32Array.of(2_000_000_000) }, []);
    // the second unit, good to day 700, is kept: units that last to day 12 * 30 = 360 expire first
    expect([...runner.needs].map((needed, month) => [month, needed]).filter(([, needed]) => needed !== 0)).toEqual([
      [1, 2_000_000_000],
      [12, 1],
    ]);
  });

  // By hand: two units needed on day 100, in the month of index 3, last until day 14 * 30 = 420, of index 14
  it("gives a new device its units on its first day, and renews them", () => {
    const place = { from: 100, until: 600, swapDays: [], lacking: 2, before: NO_OTHERS };
    runner.run(place, { count: 0, days: new Float64Array(0), units: new Int32Array(0) }, []);
    const twoIn = (...months: number[]) =>
      Array.from({ length: MONTHS }, (_, month) => (months.includes(month) ? 2 : 0));
    expect([...runner.needs]).toEqual(twoIn(3, 14));
    expect([...runner.expiries]).toEqual(twoIn(14));
  });

  // By hand: of three units fitted in the month of index 1, one place takes the first and this one the others: the second
  // lasts until day 100, in the month of index 3, and the third is new, until day 12 * 30 = 360, of index 12
  it("takes from what is fitted in a month after the places before it", () => {
    const mixed = { ...facts, fitted: [...facts.fitted] };
    mixed.fitted[1] = [{ upTo: 2, swapDay: 100 }, ...facts.fitted[1]!];
    const before = NO_OTHERS.slice();
    before[1] = 1;
    const place = { from: 0, until: 400, swapDays: [40, 50], lacking: 0, before };
    const alone = new PlaceRunner(mixed);
    alone.run(place, { count: 0, days: new Float64Array(0), units: new Int32Array(0) }, []);
    expect([...alone.expiries].flatMap((units, month) => (units > 0 ? [[month, units]] : []))).toEqual([
      [1, 2],
      [3, 1],
      [12, 1],
    ]);
  });
});
