import { expect, it } from "vitest";
import type { PackClock } from "../../src/fade/pack-clock.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
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
