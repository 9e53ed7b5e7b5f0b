import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const TESTS = "serial,date,percent,cycles\nA,2025-05-01,92,150\nA,2024-05-01,95,90\n";

const falls = (packs: string) =>
  read({ "p.csv": packs, "t.csv": TESTS }).findings.filter(({ code }) => code === "cycles-fall");

describe("cycle counts that fall", () => {
  it("are found where the packs sheet has fewer than the pack's last test before it", () => {
    expect(falls("serial,cycles,cycles_on\na,40,2026-10-01\n")).toMatchObject([
      {
        file: "p.csv",
        line: 2,
        value: "40",
        message: '"a" has 40 cycles on 2026-10-01 but 150 at its test on 2025-05-01.',
      },
    ]);
    // without a date the count is of as-of, later than any test
    expect(falls("serial,cycles\nA,40\n")[0]!.message).toBe('"A" has 40 cycles but 150 at its test on 2025-05-01.');
  });

  it("are none where the packs sheet counted earlier than a test, or as many", () => {
    expect(falls("serial,cycles,cycles_on\nA,100,2024-06-01\n")).toEqual([]);
    expect(falls("serial,cycles,cycles_on\nA,150,2026-06-01\nB,3,2026-06-01\n")).toEqual([]);
    expect(falls("serial,cycles,cycles_on\nA,,2026-06-01\n")).toEqual([]);
  });

  it("are none between two tests of a day that a sheet lists newest first", () => {
    const of = (text: string) =>
      read({ "t.csv": `serial,date,percent,cycles\n${text}` }).findings.filter(({ code }) => code === "cycles-fall");
    const twice = "A,2025-05-01 14:00,92,151\nA,2025-05-01 09:30,93,150\n";
    expect(of(`${twice}A,2024-05-01,95,90\n`)).toEqual([]);
    // the day after, it is a fall
    expect(of("A,2025-05-02,92,150\nA,2025-05-01,93,151\n")).toMatchObject([{ line: 2, value: "150" }]);
  });
});
