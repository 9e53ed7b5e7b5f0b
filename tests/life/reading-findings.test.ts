import { describe, expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { packEvidence } from "../../src/fade/evidence.ts";
import type { FadingItem } from "../../src/fade/fade-items.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { updateTrust } from "../../src/fade/reading-trust.ts";
import { LIFE_FINDING_CODES } from "../../src/life/finding-codes.ts";
import { readingFindings } from "../../src/life/reading-findings.ts";
import { FINDING_CODES } from "../../src/sheets/finding-codes.ts";
import { STOCK_FINDING_CODES } from "../../src/supplies/finding-codes.ts";
import { day, pack } from "../fleet/make-rows.ts";

const TABLES = [nodeTables(curveFromCoordinates(new Float64Array(PRIORS.length)))];

/** An item of packs tested every half year, each losing a percent a test, one test of each reading 55 %. */
function spoilt(packs: number): FadingItem {
  const made = day("2023-01-01");
  const fading = Array.from({ length: packs }, (_, p) => {
    const readings = [0.98, 0.97, 0.55, 0.95, 0.94].map((capacity, j) => ({
      day: made + 183 * (j + 1),
      capacity,
      source: { file: "tests.csv", sheet: null, line: 2 + 5 * p + j },
    }));
    const evidence = packEvidence(
      readings.map(({ capacity }, j) => ({ years: (j + 1) / 2, useYears: (j + 1) / 2, capacity })),
      [],
    );
    updateTrust(evidence, TABLES);
    updateTrust(evidence, TABLES);
    return { pack: pack(`P${p}`, { item: "a" }), evidence, readings: { readings } };
  });
  return { item: "a", packs: fading, fit: { tables: TABLES } } as unknown as FadingItem;
}

describe("readingFindings", () => {
  it("name the test that lies far off, with its line, what it read and what its siblings in time lead to", () => {
    const found = readingFindings([spoilt(1)]);
    expect(found).toMatchObject([{ code: "reading-doubted", file: "tests.csv", line: 4, lines: [], value: "55 %" }]);
    // By hand: the other tests lie on a line that is at 96 % on that day.
    expect(found[0]!.message).toMatch(/^"P0" read 55 % on 2024-07-03, where its other tests lead to about 9[567] %; /);
  });

  it("are one finding with many lines where there are many", () => {
    const found = readingFindings([spoilt(15)]);
    expect(found).toHaveLength(1);
    expect([found[0]!.line, ...found[0]!.lines].sort((a, b) => a! - b!)).toEqual(
      Array.from({ length: 15 }, (_, p) => 4 + 5 * p),
    );
    expect(found[0]!.message).toContain("it and 14 more tests");
  });

  it("say nothing where every test is trusted", () => {
    const item = spoilt(2);
    for (const { evidence } of item.packs) evidence.trust.fill(1);
    expect(readingFindings([item])).toEqual([]);
  });
});

describe("finding codes of forecasts", () => {
  it("are documented in whole sentences, under names that no other code has", () => {
    for (const [code, { means, example, fix }] of Object.entries(LIFE_FINDING_CODES)) {
      expect(means).toMatch(/^[A-Z].*\.$/);
      expect(fix).toMatch(/^[A-Z].*\.$/);
      expect(example).not.toBe("");
      expect({ ...FINDING_CODES, ...STOCK_FINDING_CODES }).not.toHaveProperty(code);
    }
  });
});
