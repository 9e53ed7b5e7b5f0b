import { describe, expect, it } from "vitest";
import { FINDING_CODES } from "../../src/sheets/finding-codes.ts";
import { say } from "../../web/strings.ts";

describe("what to do about a finding, on the page", () => {
  it("speaks of no command line", () => {
    const fixes = Object.values(FINDING_CODES).map(({ fix }) => say.sheets.fixHere(fix));
    expect(fixes.length).toBeGreaterThan(20);
    for (const fix of fixes) expect(fix).not.toMatch(/--\w|\bcheck lists\b/);
  });
});
