import { expect, it } from "vitest";
import type { PackClock } from "../../src/fade/pack-clock.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import type { PackRow } from "../../src/fleet/rows.ts";
import type { ItemLimits } from "../../src/life/item-limits.ts";
import { earliestLimit } from "../../src/life/life-limits.ts";
import { day, pack } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");
const start = day("2024-11-01");
const limits = { serviceMonths: 36, maxCycles: 400, useByMonths: null } as ItemLimits;
const clock = (cycles: number) => ({ start, cyclesPerYear: 0, cyclesAt: () => cycles }) as unknown as PackClock;
const limitAt = (cycles: number, held: string | null = null, useBy: number | null = null) =>
  earliestLimit(pack("A", { inService: start, held }), clock(cycles), limits, useBy, {
    ...defaultPolicy(asOf),
    packMaxAgeMonths: 60,
  });

it("the earliest of age, service life and cycles ends a pack; at its last cycle it is due at once", () => {
  expect(limitAt(399)).toEqual({ day: day("2027-11-01"), cause: "service-life" });
  expect(limitAt(400)).toEqual({ day: asOf, cause: "cycles" });
});

it("a use-by date of its own ends a pack where it is the earlier", () => {
  expect(limitAt(399, null, day("2027-10-31"))).toEqual({ day: day("2027-10-31"), cause: "use-by" });
  expect(limitAt(399, null, day("2027-11-30"))).toEqual({ day: day("2027-11-01"), cause: "service-life" });
});

// A day ahead on which a pack is to be retired was set; that it faded or was lost then is what nobody knew at as-of
it("a pack ends on the day ahead for which its retirement is set, and not on one on which something became of it", () => {
  const retired = day("2027-02-10");
  const found = (retiredBecause: PackRow["retiredBecause"]) =>
    earliestLimit(
      pack("A", { inService: start, retired, retiredBecause }),
      clock(0),
      limits,
      null,
      defaultPolicy(asOf),
    );
  const set = { day: retired, cause: "service-life" };
  expect([found(null), found("policy")]).toEqual([set, set]);
  for (const because of ["faded", "failed", "damaged", "lost", "recalled"] as const)
    expect(found(because)).toEqual({ day: day("2027-11-01"), cause: "service-life" });
});

it("a pack that is held may not be used: it is due now, whatever else would end it", () => {
  expect(limitAt(399, "quarantine")).toEqual({ day: asOf, cause: "held" });
  expect(limitAt(400, "quarantine")).toEqual({ day: asOf, cause: "held" });
});

// by hand: 19,999 cycles left at one in ten years are 199,990 years
it("a limit that lies over 30 years ahead is none", () => {
  const few = { start, cyclesPerYear: 0.1, cyclesAt: () => 1 } as unknown as PackClock;
  const found = (useBy: number | null) =>
    earliestLimit(pack("A"), few, { ...limits, serviceMonths: null, maxCycles: 20_000 }, useBy, defaultPolicy(asOf));
  expect(found(null)).toBeNull();
  expect(found(day("2056-10-30"))).toEqual({ day: day("2056-10-30"), cause: "use-by" });
  expect(found(day("2056-11-30"))).toBeNull();
});

// by hand: 100 cycles left at 50 a year are two years of 365.25 days, 730 whole days
it("cycles end a pack when its own rate has used them up, and never where no count or no rate tells", () => {
  const counting = (now: number | null, perYear: number | null) =>
    ({ start: null, cyclesPerYear: perYear, cyclesAt: () => now }) as unknown as PackClock;
  const found = (now: number | null, perYear: number | null) =>
    earliestLimit(pack("A"), counting(now, perYear), { ...limits, serviceMonths: null }, null, defaultPolicy(asOf));
  expect(found(300, 50)).toEqual({ day: asOf + 730, cause: "cycles" });
  expect(found(300, null)).toBeNull();
  expect(found(300, 0)).toBeNull();
  expect(found(null, 50)).toBeNull();
});

it("of two limits of cycles and of two of use-by dates the earlier counts", () => {
  const counting = { start, cyclesPerYear: 100, cyclesAt: () => 100 } as unknown as PackClock;
  const at = (packMaxCycles: number | null, facts: Partial<ItemLimits>, useBy: number | null = null) =>
    earliestLimit(pack("A", { made: start }), counting, { ...limits, serviceMonths: null, ...facts }, useBy, {
      ...defaultPolicy(asOf),
      packMaxCycles,
    })?.day;
  // by hand: 100 left at 100 a year are 365 whole days, 300 left three years, 1,095 whole days
  expect(at(200, { maxCycles: 400 })).toBe(asOf + 365);
  expect(at(null, { maxCycles: 400 })).toBe(asOf + 1095);
  expect(at(500, { maxCycles: 400 })).toBe(asOf + 1095);
  expect(at(null, { maxCycles: null, useByMonths: 60 })).toBe(day("2029-11-01"));
  expect(at(null, { maxCycles: null, useByMonths: 60 }, day("2029-10-31"))).toBe(day("2029-10-31"));
});
