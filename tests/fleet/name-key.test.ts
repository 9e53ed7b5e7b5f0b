import { describe, expect, it } from "vitest";
import { nameKey } from "../../src/fleet/name-key.ts";

describe("nameKey", () => {
  it.each([
    ["Pads Adult", "pads adult"],
    ["  PADS \t adult ", "pads adult"],
    ["pads\u00a0adult", "pads adult"],
    ["Élan\n3", "élan 3"],
    ["", ""],
  ])("of %j is %j", (name, key) => {
    expect(nameKey(name)).toBe(key);
  });

  it("keeps names apart that differ in more than case and blanks", () => {
    expect(new Set(["MD-1", "MD 1", "MD1", "MD-01"].map(nameKey)).size).toBe(4);
  });
});
