import { expect, it } from "vitest";
import { failuresText } from "../../src/out/failures-text.ts";
import type { Plan } from "../../src/out/plan-schema.ts";
import { aPlan } from "./a-plan.ts";

type Record = Plan["suddenFailures"][number];

const year = (years: number, atRisk: number, seen: number): Record["survival"][number] => {
  return { years, atRisk, seen, standardError: seen === 1 ? 0 : 0.0123, planned: 0.99 };
};
const record = (item: string, changes: Partial<Record>): Record => ({
  item,
  lives: 20,
  failures: 1,
  packYears: 60,
  shape: 1.2,
  scaleYears: 90,
  watchedFromYears: 0,
  survival: [year(1, 20, 1), year(2, 18, 0.944), year(3, 2, 0.944)],
  ...changes,
});

const told = (records: Record[]) => failuresText(aPlan({ suddenFailures: records }), { width: 80 }).join("\n");

it("failuresText: what was seen beside what the plan counts on, for as long as three packs were watched", () => {
  expect(
    told([record("pack-md", {})])
      .split("\n")
      .slice(2),
  ).toEqual([
    expect.stringMatching(/^pack-md +1 +20 +100\.0 % +- +99\.0 %$/),
    expect.stringMatching(/^ +2 +18 +94\.4 % +1\.2 % +99\.0 %$/),
  ]);
});
it("failuresText: nothing of items that never failed", () => {
  expect(told([record("pack-md", { failures: 0 })])).toBe("");
});
it("failuresText: says where the records start late, since younger failures could not be seen", () => {
  const late = told([record("pack-md", { watchedFromYears: 1.5 })]);
  expect(late).toContain("pack-md: nothing was watched before an age of 1.5 years");
  expect(told([record("pack-md", { watchedFromYears: 0.4 })])).not.toContain("nothing was watched");
});
