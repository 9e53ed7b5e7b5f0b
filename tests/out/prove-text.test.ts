import { describe, expect, it } from "vitest";
import type { Proof } from "../../src/life/prove/prove.ts";
import { proveJson } from "../../src/out/prove-json.ts";
import { proveText } from "../../src/out/prove-text.ts";
import { day } from "../fleet/make-rows.ts";

const proof: Proof = {
  asOf: day("2026-11-01"),
  cuts: [day("2026-05-01"), day("2025-11-01")],
  scores: [
    {
      item: "pack-md",
      lives: 9,
      error: { mean: 0.123_456, median: 0.071 },
      line: { mean: 0.51, median: 0.24 },
      age: { mean: 0.126, median: 0.082 },
      inside: 7 / 9,
      width: 0.38,
      readings: 40,
      readingError: 0.0123,
      readingInside: 0.8,
      expectedEnds: 8.25,
      ends: 9,
    },
    {
      item: "pack-pm",
      lives: 0,
      error: null,
      line: null,
      age: null,
      inside: null,
      width: null,
      readings: 0,
      readingError: null,
      readingInside: null,
      expectedEnds: 0,
      ends: 0,
    },
  ],
  ownSpread: [{ item: "pack-md", spread: 0.2, completedLives: 12 }],
};
const text = proveText(proof, { width: 120 });
/** The cells of each row of an item, from the top. */
const rowsOf = (item: string) =>
  text
    .split("\n")
    .filter((line) => line.startsWith(item))
    .map((line) => line.split(/\s{2,}/));

describe("proveText", () => {
  it("says that nothing can be compared where nothing came after the cut-offs, and what to give", () => {
    const none = proveText({ ...proof, scores: [proof.scores[1]!] }, { width: 120 });
    expect(none).toContain("Nothing can be compared");
    expect(none).toContain("runtime tests (serial, date, percent or minutes)");
    expect(none).not.toContain("ends expected");
    expect(none).toContain("planning aid only");
    expect(text).not.toContain("Nothing can be compared");
  });

  it("says after which days history was hidden", () => {
    expect(text).toContain("as of 2026-11-01");
    expect(text).toContain("History was hidden after each of 2026-05-01 and 2025-11-01,");
  });

  // 7 of 9 are 77.8 %, 78 % rounded
  it("sets the forecast's errors beside those of a line and of an age rule, in percent of a life", () => {
    const [lives, readings, learned] = rowsOf("pack-md");
    expect(lives).toEqual(["pack-md", "9", "12 % / 7 %", "78 %", "38 %", "51 % / 24 %", "13 % / 8 %"]);
    expect(readings?.slice(0, 4)).toEqual(["pack-md", "40", "1.2 %", "80 %"]);
    expect(readings?.at(-1)).toBe("9");
    expect(learned).toEqual(["pack-md", "12", "20 %"]);
  });

  it("shows a hyphen, not a good score, where there was nothing to score", () => {
    const [lives, readings] = rowsOf("pack-pm");
    expect(lives).toEqual(["pack-pm", "0", "-", "-", "-", "-", "-"]);
    expect(readings).toEqual(["pack-pm", "0", "-", "-", "0.0", "0"]);
  });

  it("counts thousands as every other count", () => {
    const many = { ...proof.scores[0]!, readings: 1234 };
    expect(proveText({ ...proof, scores: [many] }, { width: 120 })).toMatch(/^pack-md +1,234 +1\.2 %/m);
  });

  it("leaves out what nothing tells: ends where none came, lessons where no life was completed", () => {
    const score = { ...proof.scores[1]!, readings: 8, readingError: 0.05, readingInside: 1, expectedEnds: 1.9 };
    const ownSpread = [{ ...proof.ownSpread[0]!, completedLives: 0 }];
    const told = proveText({ ...proof, cuts: [day("2026-05-01")], scores: [score], ownSpread }, { width: 80 });
    expect(told).toContain("History was hidden after 2026-05-01, forecast");
    expect(told).toContain("Readings that were hidden");
    expect(told).toContain("- Inside: ");
    expect(told).not.toMatch(/Ends of life that were hidden|lives teach|- Line: /);
  });

  it("fits a narrow terminal and carries the cautions", () => {
    const narrow = proveText(proof, { width: 60 });
    for (const line of narrow.split("\n")) expect(line.length).toBeLessThanOrEqual(60);
    expect(narrow.replace(/\s+/g, " ")).toContain("This is a planning aid only.");
  });
});

describe("proveJson", () => {
  it("has ISO dates, and null where there was nothing to score", () => {
    const json = JSON.parse(JSON.stringify(proveJson(proof)));
    expect(json).toMatchObject({ format: "wanecast.prove/1", asOf: "2026-11-01", cuts: ["2026-05-01", "2025-11-01"] });
    expect(json.scores[0]).toMatchObject({ item: "pack-md", lives: 9, width: 0.38, ends: 9 });
    expect(json.scores[0].inside).toBeCloseTo(7 / 9, 3);
    expect(json.scores[1]).toMatchObject({ error: null, line: null, age: null, inside: null, readingError: null });
  });
});
