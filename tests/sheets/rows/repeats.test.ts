import { describe, expect, it } from "vitest";
import { read } from "../sheet-file.ts";

describe("rows of one serial that contradict each other", () => {
  it("are all set aside, and each names a row that says otherwise, also one that says nothing there", () => {
    const { fleet, setAside } = read("serial,item,device,cycles\nB1,,,10\nB1,LX,M-1,\nb1 ,LX,M-2,10\nB2,LX,,\n");
    expect(fleet.packs.map(({ serial }) => serial)).toEqual(["B2"]);
    const says = (here: string, there: string, line: number) =>
      `packs: "B1" stands in 3 rows that contradict each other in device: ${here} here, ${there} in sheet.csv, line ${line}.`;
    expect(setAside.map(({ line, reason, message }) => [line, reason, message])).toEqual([
      [2, "clash", says("nothing", '"M-1"', 3)],
      [3, "clash", says('"M-1"', '"M-2"', 4)],
      [4, "clash", says('"M-2"', '"M-1"', 3)],
    ]);
  });
});

describe("rows of one serial that do not", () => {
  it("are one: the fullest, its blanks filled by the others; what adds nothing is set aside", () => {
    const { fleet, setAside, inputs } = read({
      "a.csv": "serial,item,device,cycles\nB1,LX,,\n b1,lx,M-1,40\nB1,,,40\n",
      "b.csv": "serial,made\nB1,2022-05\n",
    });
    expect(fleet.packs).toHaveLength(1);
    // May 2022 alone is its first day, 18,993 + 120 days after 1970: 52 years of which 13 are leap years, and January to April
    expect(fleet.packs[0]).toMatchObject({ item: "lx", device: "M-1", cycles: 40, made: 52 * 365 + 13 + 120 });
    expect(setAside.map(({ file, line, reason }) => [file, line, reason])).toEqual([
      ["a.csv", 2, "repeat"],
      ["a.csv", 4, "repeat"],
    ]);
    expect(inputs.map(({ rows, used, setAside: aside }) => [rows, used, aside])).toEqual([
      [3, 1, 2],
      [1, 1, 0],
    ]);
  });

  it("are several tests where they were made at several hours of a day", () => {
    const { fleet, setAside } = read(
      "serial,date,minutes\nB1,2026-05-01 09:00,100\nb1,2026-05-01 15:00,95\nB1,2026-05-01 09:00,100\n",
    );
    expect(fleet.runtimeTests.map(({ minutes }) => minutes)).toEqual([100, 95]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([[4, "repeat"]]);
  });

  it("are one test where a sheet tells the hour of a day's test and another does not", () => {
    const { fleet, setAside, findings } = read({
      "export.csv":
        "serial,date,minutes\nB1,2026-05-01 09:00,100\nB1,2026-05-01 15:00,95\nB2,2026-05-02 08:30,90\nB3,2026-05-03 10:00,80\n",
      "register.csv":
        "serial,date,minutes,result\nB1,2026-05-01,95,\nB2,2026-05-02,90,pass\nB3,2026-05-03,85,\nB4,2026-05-03,70,\n",
    });
    // B1's is the second, B2's says more, and B3's is another
    expect(fleet.runtimeTests.map(({ serial, minutes, result }) => [serial, minutes, result])).toEqual([
      ["B1", 100, null],
      ["B1", 95, null],
      ["B3", 80, null],
      ["B2", 90, "pass"],
      ["B3", 85, null],
      ["B4", 70, null],
    ]);
    expect(setAside.map(({ file, line, reason }) => [file, line, reason])).toEqual([
      ["export.csv", 4, "repeat"],
      ["register.csv", 2, "repeat"],
    ]);
    expect(findings.map(({ code }) => code)).toContain("repeat");
  });
});
