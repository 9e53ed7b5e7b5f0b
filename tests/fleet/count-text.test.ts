import { describe, expect, it } from "vitest";
import { chanceText, counted, countText, tenthsText } from "../../src/fleet/count-text.ts";

describe("numbers for people", () => {
  it("part thousands", () => {
    expect([countText(0), countText(999), countText(1_234_567)]).toEqual(["0", "999", "1,234,567"]);
    expect([tenthsText(0), tenthsText(0.04), tenthsText(1_000_000)]).toEqual(["0.0", "0.0", "1,000,000.0"]);
  });
  it("name one thing in the singular", () => {
    expect([counted(1, "pack"), counted(0, "pack"), counted(1200, "pack")]).toEqual([
      "1 pack",
      "0 packs",
      "1,200 packs",
    ]);
    expect([counted(1, "box", "boxes"), counted(2, "box", "boxes")]).toEqual(["1 box", "2 boxes"]);
  });
  it("never claim a certainty that there is not", () => {
    expect([0, 0.001, 0.5, 0.999, 1].map(chanceText)).toEqual(["0 %", "< 1 %", "50 %", "> 99 %", "100 %"]);
  });
});
