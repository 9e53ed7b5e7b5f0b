import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { makePlan } from "../../src/index.ts";
import { read } from "./sheet-file.ts";

const HEAD = "serial,date,percent,minutes,result,at_least\n";
const USUAL = "A,2024-01-01,98,,pass,\nA,2025-01-01,95,,,\nB,2025-01-01,94,,,\nC,2025-01-01,96,,,\n";

const PACKS = "serial\nA\nB\nC\n";
const reading = (rows: string) => read({ "p.csv": PACKS, "t.csv": HEAD + USUAL + rows });
const lastTest = (rows: string) => reading(rows).fleet.runtimeTests[4];
const aside = (rows: string) => reading(rows).setAside.map(({ line, reason }) => [line, reason]);

describe("a test that leaves hardly anything", () => {
  it.each([
    ["nothing in percent", "A,2026-05-01,0,,,\n"],
    ["nothing in percent, and the word for it", "A,2026-05-01,0 %,,fail,\n"],
    ["less than a capacity can be", "A,2026-05-01,3 %,,,\n"],
    ["no minute", "A,2026-05-01,,0,fail,\n"],
  ])("is a failed test: %s", (_, rows) => {
    expect(lastTest(rows)).toMatchObject({ serial: "A", percent: null, minutes: null, result: "fail" });
    expect(aside(rows)).toEqual([]);
    expect(reading(rows).findings).toMatchObject([{ code: "nothing-left", severity: "warning", line: 6 }]);
  });

  it.each([
    ["passed", "A,2026-05-01,0,,pass,\n"],
    ["was stopped early", "A,2026-05-01,0,,,yes\n"],
    ["has another figure", "A,2026-05-01,0,210,,\n"],
    ["is below nothing", "A,2026-05-01,-3 %,,fail,\n"],
  ])("is absurd where it %s", (_, rows) => {
    expect(aside(rows)).toEqual([[6, "number-out-of-range"]]);
    expect(reading(rows).findings.map(({ code }) => code)).toEqual(["number-out-of-range"]);
  });

  it("is absurd where half the column leaves so little: it holds something else", () => {
    const hours = "serial,date,percent\nA,2026-01-01,3\nB,2026-01-01,4\nC,2026-01-01,3\nD,2026-01-01,90\n";
    const { fleet, setAside } = read({ "t.csv": hours });
    expect(fleet.runtimeTests.map(({ serial }) => serial)).toEqual(["D"]);
    expect(setAside.map(({ line }) => line)).toEqual([2, 3, 4]);
    // a row that says it failed did, whatever the rest of the column holds
    const said = read({ "t.csv": "serial,date,minutes,result\nA,2026-01-01,0,fail\nB,2026-01-01,0,\n" });
    expect(said.fleet.runtimeTests).toMatchObject([{ serial: "A", result: "fail" }]);
    expect(said.setAside.map(({ line }) => line)).toEqual([3]);
  });

  it("makes the pack due now", () => {
    const sheets = read({
      "t.csv": `${HEAD}${USUAL}A,2026-05-01,0,,,\n`,
      "p.csv": "serial,item,in_service\nA,pk,2023-12-01\nB,pk,2024-12-01\nC,pk,2024-12-01\n",
    });
    const plan = makePlan(sheets, defaultPolicy(Date.UTC(2026, 10, 1) / 86_400_000));
    const due = plan.packs.filter(({ replaceBy }) => replaceBy.kind === "already-due");
    expect(due.map(({ serial, replaceBy }) => [serial, replaceBy.because])).toEqual([["A", "failed-test"]]);
  });
});
