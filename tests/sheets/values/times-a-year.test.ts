import { describe, expect, it } from "vitest";
import { timesAYear } from "../../../src/sheets/values/times-a-year.ts";

// Reckoned by hand: 12 months, 52 weeks, 365 days, 4 quarters a year.
describe("timesAYear", () => {
  it.each([
    ["every 6 months", 2],
    ["6-monthly", 2],
    ["6 monthly", 2],
    ["12 months", 1],
    ["every two weeks", 26],
    ["every month", 12],
    ["every other day", 182.5],
    ["every 5 years", 0.2],
    ["once a quarter", 4],
    ["twice a year", 2],
    ["twice per week", 104],
    ["alle 3 Monate", 4],
    ["zweimal im Jahr", 2],
    ["tous les 6 mois", 2],
    ["cada 4 meses", 3],
  ])("reads %s", (text, times) => {
    expect(timesAYear(text)).toBeCloseTo(times, 10);
  });

  it.each(["6", "monthly", "bimonthly", "at expiry", "every 3 shifts", "6 per month", "4 x year", "every few months"])(
    "leaves %s to others",
    (text) => {
      expect(timesAYear(text)).toBeNull();
    },
  );
});
