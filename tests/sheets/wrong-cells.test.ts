import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

/** Why a sheet's only row was set aside, and the finding that tells of it. */
function told(...lines: string[]) {
  const { setAside, findings } = read(lines.join("\n"));
  return [setAside.map(({ message }) => message), findings.map(({ message }) => message)];
}

describe("a cell that sets its row aside", () => {
  // The bounds are those of the reading rules: quantities whole and not negative, capacity 5 to 130 %.
  it("says with the row, as with the finding, what was expected", () => {
    for (const messages of told("item,expiry,quantity,place", "pads,2027-01-01,-3,D1")) {
      expect(messages).toEqual([
        '"-3" in column "quantity" (C) is out of bounds; a whole number of units up to 1,000,000 was expected.',
      ]);
    }
    for (const [message] of told("serial,date,percent", "Q6,2025-01-01,870")) {
      expect(message).toMatch(/; a capacity from 5 to 130 % of rated was expected\.$/);
    }
  });

  it("shows no date as good that would be as late", () => {
    for (const messages of told("serial,date,percent", "Q6,2030-01-01,80")) {
      expect(messages).toEqual([
        '"2030-01-01" in column "date" (B) means 2030-01-01, after the as-of date 2026-11-01.',
      ]);
    }
  });
});
