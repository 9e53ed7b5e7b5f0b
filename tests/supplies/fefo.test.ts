import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chancesServed } from "../../src/supplies/chance-served.ts";
import { chancesUsed } from "../../src/supplies/chance-used.ts";
import { onDays } from "./on-days.ts";

/*
 * First expiry, first out. Source: WHO good distribution practices, as quoted: "stock with the earliest expiry date is
 * distributed and/or used before an identical stock item with a later expiry date". As a rule of leaving: no unit leaves
 * while an earlier-expiring usable one stays at that place.
 */

const ONE = Float64Array.of(0, 1);

/** Which units leave for needs of known days, by the rule alone: each need takes the usable unit that expires first. */
function leaveByRule(
  lastDays: readonly number[],
  needs: readonly number[],
  usable: (last: number, day: number) => boolean,
) {
  const left = lastDays.map(() => false);
  for (const day of needs) {
    let first = -1;
    lastDays.forEach((last, unit) => {
      if (left[unit] || !usable(last, day)) return;
      if (first < 0 || last < lastDays[first]!) first = unit;
    });
    if (first >= 0) left[first] = true;
  }
  return left.map(Number);
}

const shelf = fc
  .array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 12 })
  .map((days) => days.sort((a, b) => a - b));

describe("first expiry, first out", () => {
  it("chancesUsed lets no unit leave a device while an earlier-expiring usable one stays", () => {
    const period = fc.integer({ min: 3, max: 120 });
    fc.assert(
      fc.property(shelf, period, fc.nat({ max: 119 }), (swapDays, every, begun) => {
        // needs fall at noon, so that none ties with a swap day but for rounding
        const started = ((begun % every) + 0.5) / every;
        const place = {
          from: 0,
          until: Number.POSITIVE_INFINITY,
          use: null,
          routinePerYear: 365.25 / every,
          routineStarted: started,
        };
        const needs = Array.from({ length: 120 }, (_, n) => (n + 1 - started) * every);
        // a unit's swap day itself is too late
        const byRule = leaveByRule(swapDays, needs, (last, day) => day < last);
        expect([...chancesUsed(swapDays, place, ONE)]).toEqual(byRule);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("chancesServed lets no unit leave a store while an earlier-expiring usable one stays", () => {
    const needDays = fc.array(fc.integer({ min: 1, max: 320 }), { maxLength: 15 });
    fc.assert(
      fc.property(shelf, needDays, (lastDays, days) => {
        const knownDays = days.sort((a, b) => a - b);
        const byRule = leaveByRule(lastDays, knownDays, (last, day) => day <= last);
        const served = chancesServed(lastDays, {
          from: 0,
          known: onDays(knownDays),
          usesPerMonth: 0,
          unitsPerUse: ONE,
        });
        expect([...served]).toEqual(byRule);
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});
