import { describe, expect, it } from "vitest";
import { nearName } from "../../../src/sheets/checks/near-name.ts";

const KNOWN = ["m22-001", "m22-014", "pads-adult", "md 07"];

describe("nearName", () => {
  it.each([
    ["a letter more", "pads-adultt", "pads-adult"],
    ["a letter less", "pads-adlt", "pads-adult"],
    ["another letter", "m22-015", "m22-014"],
    ["signs that look the same", "m22-oo1", "m22-001"],
    ["other dashes and blanks", "md_07", "md 07"],
  ])("finds the one name with %s", (_, name, near) => {
    expect(nearName(name, KNOWN)).toBe(near);
  });
  it("names none where none is near, or where two are", () => {
    expect(nearName("gel", KNOWN)).toBeNull();
    // one number away from 001 and from 014
    expect(nearName("m22-011", KNOWN)).toBeNull();
    expect(nearName("m22-001", ["m22-001"])).toBeNull();
  });
});
