import { describe, expect, it } from "vitest";
import { chanceAt, gridChances } from "../../src/fade/grid-chances.ts";
import { DRAWS } from "../../src/fade/item-fit.ts";
import { GRID_DAYS, gridIndex } from "../../src/fade/time-grid.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { monthEndsAhead } from "../../src/life/chance-dates.ts";
import { addDueByDraw } from "../../src/life/due-by-draw.ts";
import type { Ending } from "../../src/life/due-chance.ts";
import { cumulativeHazard, failureRisk } from "../../src/life/sudden-failures.ts";
import { normalCdf } from "../../src/maths/normal.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { day } from "../fleet/make-rows.ts";

const MONTHS = 60;
const CURVES = 8;
const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: MONTHS };
const random = seededRandom(12);
const common = Float64Array.from({ length: DRAWS }, () => 0.1 * random.normal());

/** Packs of all ages, some not in service yet or of an unknown start, some with a limit, that fade about some time. */
function madeUp(packs: number, shape: number): (Ending & { item: string })[] {
  const risk = { ...failureRisk("p", [], DRAWS), shape, scaleYears: 30 };
  return Array.from({ length: packs }, (_, i) => {
    const middle = Math.log(200 + 3000 * random.uniform());
    const chances = gridChances(CURVES, (curve, into) => {
      GRID_DAYS.forEach((days, k) => {
        into[k] = days > 0 ? normalCdf((Math.log(days) - middle - 0.05 * curve) / 0.2) : 0;
      });
    });
    const limit = i % 9 === 0 ? { day: policy.asOf + 40 * i, cause: "age" as const } : null;
    return {
      item: "p",
      decline: i % 11 === 0 ? null : { chances, common, bands: () => [] },
      exposure: i % 13 === 0 ? null : { risk, ageYears: 9 * random.uniform() - 1 },
      end: { fade: null, lasting: null, failedOn: i % 17 === 1 ? policy.asOf - 3 : null, limit },
    };
  });
}

/** By definition, pack by pack: 1 - (1 - c) S before the certain day, c at the time stretched by the draw's model error. */
function oneByOne(packs: readonly Ending[]): Float64Array {
  const sum = new Float64Array(DRAWS * MONTHS);
  const days = monthEndsAhead(policy.asOf, MONTHS);
  for (const { decline, exposure, end } of packs) {
    const certain = end.failedOn !== null ? 0 : end.limit === null ? Infinity : end.limit.day - policy.asOf;
    for (let draw = 0; draw < DRAWS; draw++) {
      days.forEach((ahead, m) => {
        const faded = decline && chanceAt(decline.chances, draw % CURVES, gridIndex(ahead, common[draw]!));
        const hazard = (years: number) => (exposure === null ? 0 : cumulativeHazard(exposure.risk, years));
        const age = exposure?.ageYears ?? 0;
        const pace = exposure === null ? 0 : exposure.risk.paces[exposure.risk.paceOf[draw]!]!;
        const lasting = Math.exp(-pace * (hazard(age + ahead / 365.25) - hazard(age)));
        const at = draw * MONTHS + m;
        sum[at] = sum[at]! + (ahead >= certain ? 1 : 1 - (1 - (faded ?? 0)) * lasting);
      });
    }
  }
  return sum;
}

describe("addDueByDraw", () => {
  // failures that come early in life, and those of packs yet to enter service, bend most with age
  it.each([0.7, 1, 3])("is the sum of packs to 1e-4 of a pack where failures have shape %d", (shape) => {
    const packs = madeUp(300, shape);
    const all = oneByOne(packs);
    const sum = new Float64Array(DRAWS * MONTHS);
    addDueByDraw(packs, policy, sum);
    let farthest = 0;
    sum.forEach((due, at) => {
      farthest = Math.max(farthest, Math.abs(due - all[at]!) / packs.length);
    });
    expect(farthest).toBeLessThan(1e-4);
    expect(all.at(-1)).toBeGreaterThan(100);
  });

  it("adds to what is there, is exact for one pack, and tells some draws as it tells them all", () => {
    for (const pack of madeUp(20, 1.2)) {
      const sum = new Float64Array(DRAWS * MONTHS).fill(5);
      addDueByDraw([pack], policy, sum);
      const alone = oneByOne([pack]);
      expect(sum.every((due, at) => Math.abs(due - 5 - alone[at]!) < 1e-9)).toBe(true);
      const every41st = new Float64Array(5 * MONTHS);
      addDueByDraw([pack], policy, every41st, 41);
      const told = (at: number) => alone[at + Math.floor(at / MONTHS) * 40 * MONTHS]!;
      expect(every41st.every((due, at) => Math.abs(due - told(at)) < 1e-9)).toBe(true);
    }
  });
});
