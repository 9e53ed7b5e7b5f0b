import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/index.ts";
import { read } from "./sheet-file.ts";

const MONTHS = "Item,Jan,Feb\nAdult pads,3,4\n";
const useIn = (name: string, text = MONTHS) =>
  read({ [name]: text }).fleet.useLog.map(({ date, quantity }) => [date, quantity]);

describe("columns headed by months alone", () => {
  const expected = [
    [dayFromIso("2026-01-31"), 3],
    [dayFromIso("2026-02-28"), 4],
  ];

  it.each(["Usage 2026.csv", "usage_2026_north.csv", "Verbrauch 2026.csv"])(
    "take their year, and that they were used, from the name of the file: %s",
    (name) => expect(useIn(name)).toEqual(expected),
  );

  it("take the year of a line above them before that of the file", () => {
    expect(useIn("usage 2027.csv", `Consumption 2026,,\n${MONTHS}`)).toEqual(expected);
  });

  it.each(["usage 2025-26.csv", "usage 2025 2026.csv", "stock 2026.csv", "usage.csv"])(
    "are refused where it tells of no one year of use: %s",
    (name) => {
      const { fleet, findings } = read({ [name]: MONTHS });
      expect(fleet.useLog).toEqual([]);
      expect(findings.map(({ code }) => code)).toContain("unknown-table");
    },
  );
});
