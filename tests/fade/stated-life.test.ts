import { expect, it } from "vitest";
import { packClocks } from "../../src/fade/pack-clock.ts";
import { statedLives } from "../../src/fade/stated-life.ts";
import { FADE_ACTIVATION_EV } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { catalogued, day, pack } from "../fleet/make-rows.ts";

const AS_OF = day("2026-01-01");

/** A fleet with three packs made four years of 365.25 days before as-of, at 200, 400 and 600 cycles. */
function livesWith(facts: Parameters<typeof catalogued>[2]) {
  const fleet = emptyFleet();
  fleet.catalogue = [catalogued("pack-md", "pack", facts)];
  fleet.packs = [200, 400, 600].map((cycles, n) => {
    return pack(`P${n}`, { item: "pack-md", made: AS_OF - 1461, inService: AS_OF - 1461, cycles, cyclesOn: AS_OF });
  });
  return statedLives(fleet, packClocks(fleet, AS_OF, FADE_ACTIVATION_EV));
}

// By hand: 50, 100 and 150 cycles a year, 100 in the middle; 300 cycles last three years, 60 months five
it.each([
  [{ serviceMonths: 60 }, 5, null],
  [{ maxCycles: 300 }, null, 3],
  [{ serviceMonths: 60, maxCycles: 300 }, 5, 3],
  [{}, null, null],
])("statedLives of %o: %d years, %d at most", (facts, years, atMost) => {
  const stated = livesWith(facts)("pack-md");
  if (years === null) expect(stated.years).toBeNull();
  else expect(stated.years).toBeCloseTo(years, 9);
  if (atMost === null) expect(stated.yearsAtMost).toBeNull();
  else expect(stated.yearsAtMost).toBeCloseTo(atMost, 9);
});
it("statedLives: nothing is stated for an item that no catalogue holds", () => {
  expect(livesWith({ serviceMonths: 60 })("pack-pm")).toEqual({ years: null, yearsAtMost: null });
});
