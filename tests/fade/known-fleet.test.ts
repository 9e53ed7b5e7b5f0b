import { describe, expect, it } from "vitest";
import { knownBy } from "../../src/fade/known-fleet.ts";
import { emptyFleet, type PackRow } from "../../src/fleet/rows.ts";
import { day, pack, runtimeTest } from "../fleet/make-rows.ts";

const CUT = day("2025-06-30");
const known = (facts: Partial<PackRow>) => {
  const [one] = knownBy({ ...emptyFleet(), packs: [pack("A", facts)] }, CUT).packs;
  const { retired, retiredBecause, cycles, cyclesOn } = one!;
  return { retired, retiredBecause, cycles, cyclesOn };
};
const BEFORE = day("2025-06-30");
const AFTER = day("2025-07-01");
const FADED = { retiredBecause: "faded" as const };
const IN_SERVICE = { retired: null, retiredBecause: null };
const UNCOUNTED = { cycles: null, cyclesOn: null };

describe("knownBy: the fleet as it was known on a day", () => {
  it("knows tests up to that day and none after", () => {
    const runtimeTests = [day("2025-06-29"), BEFORE, AFTER].map((date) => runtimeTest("A", date));
    expect(knownBy({ ...emptyFleet(), runtimeTests }, CUT).runtimeTests).toEqual(runtimeTests.slice(0, 2));
  });
  it("knows no retirement to come, and the count made before all the same", () => {
    const counted = { cycles: 90, cyclesOn: BEFORE };
    expect(known({ retired: AFTER, ...FADED, ...counted })).toEqual({ ...IN_SERVICE, ...counted });
    expect(known({ retired: BEFORE, ...FADED, ...counted })).toEqual({ retired: BEFORE, ...FADED, ...counted });
  });
  it("knows no count to come, and that the pack is in service all the same", () => {
    expect(known({ cycles: 90, cyclesOn: AFTER })).toEqual({ ...IN_SERVICE, ...UNCOUNTED });
    expect(known({ retired: BEFORE, ...FADED, cycles: 90, cyclesOn: AFTER })).toEqual({
      ...{ retired: BEFORE, ...FADED },
      ...UNCOUNTED,
    });
  });
  it("takes a count without a day for one of the last day of a pack that is retired", () => {
    expect(known({ retired: AFTER, ...FADED, cycles: 90 })).toEqual({ ...IN_SERVICE, ...UNCOUNTED });
    expect(known({ retired: BEFORE, ...FADED, cycles: 90 })).toEqual({
      ...{ retired: BEFORE, ...FADED },
      ...{ cycles: 90, cyclesOn: null },
    });
  });
});
