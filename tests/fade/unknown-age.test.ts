import { describe, expect, it } from "vitest";
import { itemsWithEvidence } from "../../src/fade/items-with-evidence.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type PackRow, type RuntimeTestRow } from "../../src/fleet/rows.ts";
import { day, pack, runtimeTest } from "../fleet/make-rows.ts";

const tested = day("2025-01-01");
const later = tested + 730.5;

/** Both clocks of one pack at its readings. */
function agesOf(facts: Partial<PackRow>, tests: RuntimeTestRow[], others: PackRow[] = []) {
  const fleet = { ...emptyFleet(), packs: [pack("A", { item: "p", ...facts }), ...others], runtimeTests: tests };
  const { items } = itemsWithEvidence(fleet, defaultPolicy(day("2027-06-01")), () => true);
  const { years, useYears } = items[0]!.packs[0]!.evidence;
  return { years: [...years], useYears: [...useYears] };
}

const read = (percent: number, date = tested, cycles: number | null = null) =>
  runtimeTest("A", Math.floor(date), { percent, cycles });

describe("the age of a pack without dates", () => {
  // By hand: the usual curve loses a fifth of the rating in five years.
  it("is that of usual packs that have lost as much, and runs on from there", () => {
    const { years, useYears } = agesOf({}, [read(80), read(78, later)]);
    expect(years[0]).toBeCloseTo(5, 3);
    expect(years[1]! - years[0]!).toBeCloseTo(2, 2);
    expect(useYears).toEqual(years);
  });

  it("is none where the pack was read as new, and grows with what it had lost", () => {
    const ageAt = (percent: number) => agesOf({}, [read(percent)]).years[0]!;
    expect(ageAt(101)).toBeCloseTo(0, 3);
    const ages = [98, 90, 80, 60, 40].map(ageAt);
    expect(ages).toEqual([...ages].sort((a, b) => a - b));
    expect(ages.at(-1)).toBeLessThan(30);
  });

  it("is told by its cycles where they are counted", () => {
    const usual = pack("B", { item: "p", inService: tested - 731, cycles: 200, cyclesOn: tested });
    const { years, useYears } = agesOf({}, [read(80, tested, 300)], [usual]);
    // By hand: 200 cycles in 731 days are usual; 300 take 1096.5 days, 3.002 years
    expect(useYears[0]).toBeCloseTo(1096.5 / 365.25, 9);
    expect(years[0]).toBeCloseTo(useYears[0]!, 9);
  });

  it("goes on in use where siblings' cycles are counted and its own are not", () => {
    const usual = pack("B", { item: "p", inService: tested - 731, cycles: 200, cyclesOn: tested });
    const { years, useYears } = agesOf({}, [read(99), read(96, later)], [usual]);
    expect(useYears[1]! - useYears[0]!).toBeCloseTo(years[1]! - years[0]!, 6);
  });

  it("is left alone where a date tells it", () => {
    expect(agesOf({ inService: tested - 365 }, [read(60)]).years[0]).toBeCloseTo(365 / 365.25, 9);
  });
});
