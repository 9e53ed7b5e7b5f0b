import { describe, expect, it } from "vitest";
import { failureRisk } from "../../src/life/sudden-failures.ts";
import { failureRecord } from "../../src/life/survival-by-year.ts";
import type { WatchedLife } from "../../src/maths/kaplan-meier.ts";

const life = (exit: number, failed: boolean, entry = 0): WatchedLife => ({ entry, exit, failed });
const recordOf = (lives: WatchedLife[]) => failureRecord("p", failureRisk("p", lives, 8), lives);

describe("failureRecord", () => {
  // Source: Freireich et al. (1963), Blood 21, 699-716, 6-MP; Kaplan-Meier with Greenwood's errors by R's survival.
  it("tells the published share that outlives each age, with its error and the number at risk", () => {
    const failed = [10, 7, 23, 22, 6, 16, 6, 13, 6];
    const censored = [32, 34, 32, 25, 11, 20, 19, 17, 35, 9, 6, 10];
    const { survival, lives, failures, packYears } = recordOf([
      ...failed.map((exit) => life(exit, true)),
      ...censored.map((exit) => life(exit, false)),
    ]);
    // 9 / 359 a week is the published rate
    expect({ lives, failures, packYears }).toEqual({ lives: 21, failures: 9, packYears: 359 });
    const at = (years: number) => survival.find((row) => row.years === years)!;
    for (const [years, atRisk, share, error] of [
      [6, 21, 0.857142857143, 0.07636035483],
      [7, 17, 0.806722689076, 0.08693528518],
      [10, 15, 0.752941176471, 0.09634965299],
      [13, 12, 0.690196078431, 0.10681470778],
      [16, 11, 0.62745098039, 0.11405386526],
      [22, 7, 0.53781512605, 0.12823375169],
      [23, 6, 0.448179271709, 0.13459145676],
    ] as const) {
      expect(at(years).atRisk).toBe(atRisk);
      expect(at(years).seen).toBeCloseTo(share, 10);
      expect(at(years).standardError).toBeCloseTo(error, 10);
    }
    // between failures the estimate stands still
    expect(at(5)).toMatchObject({ atRisk: 21, seen: 1, standardError: 0 });
    expect(at(15).seen).toBe(at(13).seen);
  });

  // By hand: of four watched from 2 years on one fails at 2.5, so that 3/4 of those that reached 2 outlive it; a fifth joins at 4.
  it("counts late entries from the age at which they were first watched, and speaks of packs that reached it", () => {
    const lives = [life(2.5, true, 2), life(6, false, 2), life(6, false, 2), life(6, false, 2), life(6, false, 4)];
    const { survival, watchedFromYears } = recordOf(lives);
    expect(watchedFromYears).toBe(2);
    expect(survival.map(({ years, atRisk, seen }) => [years, atRisk, seen])).toEqual([
      [3, 3, 0.75],
      [4, 3, 0.75],
      [5, 4, 0.75],
      [6, 4, 0.75],
    ]);
  });

  it("plans with shares that never rise, between those seen and those usual where failures are few", () => {
    const lives = [life(1.5, true), ...Array.from({ length: 39 }, () => life(4, false))];
    const planned = recordOf(lives).survival.map((row) => row.planned);
    expect(planned).toHaveLength(4);
    for (let i = 1; i < 4; i++) expect(planned[i]!).toBeLessThanOrEqual(planned[i - 1]!);
    // usual is half a percent a year; one in forty was seen
    expect(planned[3]!).toBeGreaterThan(1 - 2 / 40);
    expect(planned[3]!).toBeLessThan(1 - 0.25 / 40);
  });

  it("is an empty table where nothing was watched", () => {
    expect(recordOf([])).toMatchObject({ lives: 0, survival: [], watchedFromYears: 0 });
  });
});
