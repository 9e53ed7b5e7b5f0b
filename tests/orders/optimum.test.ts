import { readFileSync } from "node:fs";
import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import { costOfSchedule } from "./cost-of-schedule.ts";
import { solveCase } from "./milp.ts";
import { randomCases } from "./random-cases.ts";

// Source: optima of a mixed integer programme (milp.ts) found by HiGHS 1.15.3; write-optima.ts made the file. null =
// not proved within its time limit, or no order day can meet the needs (a life shorter than the order calendar).
const optima: (number | null)[] = JSON.parse(readFileSync(new URL("./optima.json", import.meta.url), "utf8"));
const cases = randomCases(300, 1958).map((one, index) => ({ one, optimum: optima[index]! }));
const solved = cases.filter(({ optimum }) => optimum !== null);

// a line is rounded to the cent, half up; holding is not
const rounding = (lines: number) => 0.5 * lines + 0.01;

describe("scheduleOrders against the optimum of random cases", () => {
  it("has an optimum for nearly all of them", () => {
    expect(optima).toHaveLength(300);
    expect(solved.length).toBeGreaterThanOrEqual(295);
  });

  it("equals it for single items", () => {
    const singles = solved.filter(({ one }) => one.items.length === 1);
    expect(singles.length).toBeGreaterThanOrEqual(95);
    for (const { one, optimum } of singles) {
      const { cost, lines } = costOfSchedule(one);
      expect(Math.abs(cost - optimum), one.name).toBeLessThanOrEqual(rounding(lines));
    }
  });

  it("comes within 1 % of it on average and 3 % at worst where items share fees", () => {
    const gaps = solved
      .filter(({ one }) => one.items.length > 1)
      .map(({ one, optimum }) => {
        const { cost, lines } = costOfSchedule(one);
        expect(cost - optimum, one.name).toBeGreaterThanOrEqual(-rounding(lines));
        return cost / optimum - 1;
      });
    expect(gaps.length).toBeGreaterThanOrEqual(190);
    expect(gaps.reduce((a, b) => a + b, 0) / gaps.length).toBeLessThan(0.01);
    expect(Math.max(...gaps)).toBeLessThan(0.03);
  });
});

describe("the stored optima", () => {
  it("are found again by solving twenty of them", { timeout: 300_000 }, async () => {
    const highs = await loadHighs();
    // small ones: a calendar of few order days, or one item
    const small = solved.filter(({ one }) => one.everyMonths !== null || (one.items.length === 1 && one.months === 12));
    const some = small.slice(0, 20);
    expect(some).toHaveLength(20);
    for (const { one, optimum } of some) expect(solveCase(highs, one, 120), one.name).toBeCloseTo(optimum, 2);
  });
});
