import { describe, expect, it } from "vitest";
import { DRAWS } from "../../src/fade/item-fit.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { type NewPack, newPackChances } from "../../src/life/new-pack.ts";
import { day } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));
const limits = { kind: null, serviceMonths: null, maxCycles: null, useByMonths: null };
/** A pack that fails at a steady tenth a year, twice as fast in every second draw, and does not fade. */
const risk = {
  ...{ failures: 0, lives: 0, packYears: 0, seen: [], shape: 1, scaleYears: 10 },
  paces: Float64Array.of(1, 2),
  paceOf: Uint8Array.from({ length: DRAWS }, (_, draw) => draw % 2),
};
const MONTHS = 36;

function dueBy(pack: Partial<NewPack>, more: Partial<typeof policy> = {}): (draw: number, month: number) => number {
  const into = new Float64Array(DRAWS * (MONTHS + 1)).fill(9);
  const whole = { decline: null, risk, limits, cyclesPerYear: null, ...pack };
  newPackChances(whole as NewPack, { ...policy, ...more }, MONTHS, into);
  return (draw, month) => into[draw * (MONTHS + 1) + month]!;
}

describe("newPackChances", () => {
  // by hand: at a steady rate of a tenth a year the chance to last is exp(-years / 10), at twice the pace exp(-years / 5)
  it("is not due on its first day, and then as its failures come, by draw", () => {
    const due = dueBy({});
    expect(due(0, 0)).toBe(0);
    expect(due(0, 1)).toBeCloseTo(1 - Math.exp(-1 / 120), 10);
    expect(due(0, 36)).toBeCloseTo(1 - Math.exp(-0.3), 10);
    expect(due(7, 36)).toBeCloseTo(1 - Math.exp(-0.6), 10);
  });

  it.each([
    ["months in service", { limits: { ...limits, serviceMonths: 24 } }, {}],
    ["its use-by date", { limits: { ...limits, useByMonths: 24 } }, {}],
    ["the policy's age", {}, { packMaxAgeMonths: 24 }],
    ["300 cycles at 150 a year", { limits: { ...limits, maxCycles: 300 }, cyclesPerYear: 150 }, {}],
    [
      "the policy's cycles, fewer than its own",
      { limits: { ...limits, maxCycles: 900 }, cyclesPerYear: 150 },
      { packMaxCycles: 300 },
    ],
    ["the earliest of them", { limits: { ...limits, serviceMonths: 24, useByMonths: 30 } }, { packMaxAgeMonths: 36 }],
  ])("is due for certain after two years by %s", (_, pack, more) => {
    const due = dueBy(pack, more);
    expect(due(1, 23)).toBeLessThan(0.4);
    expect([due(0, 24), due(1, 24), due(1, 36)]).toEqual([1, 1, 1]);
  });

  it("lasts a month at least, and cycles end nothing where their rate is unknown", () => {
    const short = dueBy({}, { packMaxAgeMonths: 0 });
    expect([short(0, 0), short(0, 1)]).toEqual([0, 1]);
    expect(dueBy({ limits: { ...limits, maxCycles: 1 } })(0, 36)).toBeLessThan(0.3);
  });
});
