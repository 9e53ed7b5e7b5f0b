import { describe, expect, it } from "vitest";
import { isForecast } from "../../src/out/line-standing.ts";
import { aPlan } from "./a-plan.ts";

const [line] = aPlan().orders;

describe("isForecast", () => {
  // the plan is made anew every month: a month after 31 January is the last day of February
  it("begins a month after as-of", () => {
    const on = (orderBy: string, asOf: string) => isForecast({ ...line!, orderBy }, asOf);
    expect(on("2026-11-01", "2026-11-01")).toBe(false);
    expect(on("2026-12-01", "2026-11-01")).toBe(false);
    expect(on("2026-12-02", "2026-11-01")).toBe(true);
    expect(on("2027-02-28", "2027-01-31")).toBe(false);
    expect(on("2027-03-01", "2027-01-31")).toBe(true);
  });
});
