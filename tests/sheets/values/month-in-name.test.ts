import { expect, it } from "vitest";
import { monthFromText, monthText } from "../../../src/calendar/month.ts";
import { monthInName } from "../../../src/sheets/values/month-in-name.ts";

const upTo = monthFromText("2026-11")!;
const read = (name: string) => {
  const found = monthInName(name, upTo);
  return found && [monthText(Math.floor(found.time)), Math.round((found.time % 1) * 32), found.rest];
};

it.each([
  ["Check 2026-09", "2026-09", 0, "check"],
  ["09_2026 AED", "2026-09", 0, "aed"],
  ["checks 2026-09-15", "2026-09", 15, "checks"],
  ["Sept", "2026-09", 0, ""],
  ["Station 2 Oct 26", "2026-10", 0, "station 2"],
  ["oct26", "2026-10", 0, ""],
  ["Février 2025", "2025-02", 0, ""],
  // without a year: the last one up to November 2026
  ["Nov", "2026-11", 0, ""],
  ["December check", "2025-12", 0, "check"],
])("reads the month in %s", (name, month, day, rest) => {
  expect(read(name)).toEqual([month, day, rest]);
});

it.each(["Station 3", "Pads", "2026", "Ward 12", "AED 2026 list 3", "Budget 26"])("finds none in %s", (name) => {
  expect(read(name)).toBeNull();
});
