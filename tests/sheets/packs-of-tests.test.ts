import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { makePlan } from "../../src/index.ts";
import { AS_OF, read } from "./sheet-file.ts";

const TESTS =
  "Serial,Date,Runtime (min),Result\nB1,2026-03-01,118,Pass\nb1,2026-09-01,116,Pass\nB2,2026-03-01,121,Pass\nB2,2026-09-01,115,Fail\n";

describe("a log of tests without a list of packs", () => {
  it("tells of the packs that were tested, each once, from the line of its first test", () => {
    const { fleet, findings, inputs, setAside } = read({ "log.csv": TESTS });
    expect(fleet.packs.map(({ serial, item, inService, source }) => [serial, item, inService, source.line])).toEqual([
      ["B1", null, null, 2],
      ["B2", null, null, 4],
    ]);
    expect(findings).toMatchObject([
      {
        code: "packs-of-tests",
        severity: "info",
        message: "No sheet lists packs, so what was tested, 2 serials, is taken for packs in service.",
      },
    ]);
    expect([inputs[0]!.rows, inputs[0]!.used, setAside]).toEqual([4, 4, []]);
  });

  it("makes a plan, with what failed due now", () => {
    const plan = makePlan(read({ "log.csv": TESTS }), defaultPolicy(AS_OF));
    const because = new Map(plan.packs.map(({ serial, replaceBy }) => [serial, replaceBy.because]));
    expect(because.get("B2")).toBe("failed-test");
    expect(because.size).toBe(2);
  });

  it("names no pack where a sheet lists some: a serial that it lacks may be a slip of the pen", () => {
    const { fleet, findings } = read({ "log.csv": TESTS, "p.csv": "serial,item\nB1,x\n" });
    expect(fleet.packs.map(({ serial }) => serial)).toEqual(["B1"]);
    expect(findings.map(({ code }) => code)).toEqual(["serial-unknown"]);
  });
});
