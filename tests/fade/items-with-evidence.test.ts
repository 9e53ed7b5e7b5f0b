import { expect, it } from "vitest";
import { itemsWithEvidence } from "../../src/fade/items-with-evidence.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { day, pack, runtimeTest } from "../fleet/make-rows.ts";

it("knows nothing of tests, retirements and counts after as-of, an undated count of a retired pack among them", () => {
  const facts = { item: "A", inService: day("2022-01-01") };
  const later = { retired: day("2025-06-01"), retiredBecause: "faded" as const };
  const fleet = {
    ...emptyFleet(),
    packs: [pack("P", { ...facts, ...later, cycles: 400 })],
    runtimeTests: [
      runtimeTest("P", day("2023-01-01"), { percent: 95 }),
      runtimeTest("P", day("2025-05-01"), { percent: 79 }),
    ],
  };
  const at = (asOf: string) => itemsWithEvidence(fleet, defaultPolicy(day(asOf)), () => true).items[0]!.packs[0]!;
  const then = at("2024-01-01");
  expect([...then.evidence.capacity]).toEqual([0.95]);
  expect(then.evidence.bounds).toEqual([]);
  expect(then.clock.cyclesPerYear).toBe(null);
  const now = at("2026-01-01");
  expect(now.evidence.bounds).toHaveLength(1);
  // 400 cycles from 2022-01-01 to 2025-06-01, 1247 days, by hand
  expect(now.clock.cyclesPerYear).toBeCloseTo((400 * 365.25) / 1247, 6);
});
