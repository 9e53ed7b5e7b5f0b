import { describe, expect, it } from "vitest";
import { packEvidence } from "../../src/fade/evidence.ts";
import type { FadingPack } from "../../src/fade/items-with-evidence.ts";
import type { PackRow } from "../../src/fleet/rows.ts";
import { type SiblingFacts, siblingFacts } from "../../src/life/sibling-facts.ts";
import { siblingWords } from "../../src/life/sibling-words.ts";
import { pack } from "../fleet/make-rows.ts";

/** A pack by its readings, days and percents. */
function fading(readings: [number, number][], facts: Partial<PackRow> = {}): FadingPack {
  const list = readings.map(([day, percent]) => ({ day, capacity: percent / 100 }));
  const evidence = packEvidence(
    list.map(({ day, capacity }) => ({ years: day / 365, useYears: day / 365, capacity })),
    [],
  );
  return { pack: pack("x", facts), evidence, readings: { readings: list } } as unknown as FadingPack;
}

/** Loses a percent in `pace` days, from 90 % on day 0; tested every 100 days until day `until`. */
function steady(pace: number, until: number, facts: Partial<PackRow> = {}): FadingPack {
  const days = Array.from({ length: Math.floor(until / 100) + 1 }, (_, i) => i * 100);
  return fading(
    days.map((day) => [day, 90 - day / pace]),
    facts,
  );
}

describe("siblingFacts", () => {
  // By hand: at a percent in 30, 40 and 50 days, from 85 % to 80 % take 150, 200 and 250 days.
  it("tell how long siblings took from a capacity to the threshold, by straight lines between their tests", () => {
    const facts = siblingFacts([steady(30, 500), steady(40, 500), steady(50, 600)], 0.8, 0.8)(0.852);
    expect(facts).toEqual({
      percent: 85,
      passed: 3,
      ended: 3,
      days: { from: expect.closeTo(150, 6), to: expect.closeTo(250, 6), ofMost: false },
    });
    expect(siblingWords(facts!, "80 %")).toBe("3 siblings that passed 85 % came to 80 % 5 to 8 months later");
  });

  it("count those that passed and have not come to the threshold, and leave out those that have not passed", () => {
    const ended = [steady(30, 500), steady(40, 500), steady(50, 600)];
    const facts = siblingFacts([...ended, steady(100, 700), steady(100, 400)], 0.8, 0.8)(0.85);
    expect(facts).toMatchObject({ passed: 4, ended: 3 });
    expect(siblingWords(facts!, "80 %")).toMatch(/^3 of 4 siblings that passed 85 % /);
  });

  it("say nothing of two, nor at the threshold or below it", () => {
    const facts = siblingFacts([steady(30, 500), steady(40, 500)], 0.8, 0.8);
    expect(facts(0.85)).toBeNull();
    const three = siblingFacts([steady(30, 500), steady(40, 500), steady(50, 600)], 0.8, 0.8);
    expect(three(0.8)).toBeNull();
    expect(three(0.7)).toBeNull();
  });

  // By hand: 85 % is passed on day 250, retirement as faded on day 400 is 150 days later.
  it("take a retirement as faded for the end where packs were retired at this threshold, and not at another", () => {
    const retired = [1, 2, 3].map(() => steady(50, 300, { retired: 400, retiredBecause: "faded" }));
    expect(siblingFacts(retired, 0.8, 0.8)(0.85)!.days).toMatchObject({ from: 150, to: 150 });
    expect(siblingFacts(retired, 0.7, 0.8)(0.85)).toBeNull();
  });

  it("do not build on a test that the forecast hardly heeds", () => {
    const spoilt = [1, 2, 3].map(() => {
      const one = fading([
        [0, 95],
        [100, 55],
        [200, 94],
        [300, 93],
      ]);
      one.evidence.trust[1] = 0.04;
      return one;
    });
    expect(siblingFacts(spoilt, 0.8, 0.8)(0.945)).toBeNull();
  });

  it("speak of the middle four fifths where there are many", () => {
    // By hand: 85 % to 80 % takes 5 times 20 to 40 days; a tenth of 21 values in steps of 5 lies below 110, above 190.
    const many = Array.from({ length: 21 }, (_, i) => steady(20 + i, 500));
    const facts = siblingFacts(many, 0.8, 0.8)(0.85);
    expect(facts).toMatchObject({ ended: 21, days: { ofMost: true } });
    expect(facts!.days.from).toBeCloseTo(110, 6);
    expect(facts!.days.to).toBeCloseTo(190, 6);
    expect(siblingWords(facts!, "80 %")).toBe(
      "21 siblings that passed 85 % came to 80 %, most of them 4 to 6 months later",
    );
  });
});

describe("siblingWords", () => {
  const facts = (from: number, to: number): SiblingFacts => ({
    percent: 82,
    passed: 3,
    ended: 3,
    days: { from, to, ofMost: false },
  });
  it.each([
    [2, 10, "within a month"],
    [10, 40, "up to 1 month later"],
    [10, 70, "up to 2 months later"],
    [28, 33, "about 1 month later"],
    [210, 365, "7 to 12 months later"],
  ])("of %i to %i days say %s", (from, to, when) => {
    expect(siblingWords(facts(from, to), "80 %")).toBe(`3 siblings that passed 82 % came to 80 % ${when}`);
  });
});
