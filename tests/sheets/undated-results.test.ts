import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const HEAD = "Battery SN,Location,Install date";
const held = (text: string) => read(text).fleet.packs.map((pack) => pack.held);

describe("a test's result that no column dates", () => {
  it("holds the packs that failed, and lets those that passed serve", () => {
    expect(
      held(
        `${HEAD},Last test result\nB1,Van 1,2023-03-01,PASS\nB2,Van 2,2023-03-01,FAIL\nB3,Van 3,2022-03-01,ok\nB4,Van 4,2021-05-01,Failed - replace\nB5,Van 5,2021-05-01,NOK\nB6,Van 6,2021-05-01,\n`,
      ),
    ).toEqual([null, "FAIL", null, "Failed - replace", "NOK", null]);
    expect(held("Akku-Nr.,Inbetriebnahme,Prüfergebnis\nA,2023-03-01,i.O.\nB,2023-03-01,n.i.O.\n")).toEqual([
      null,
      "n.i.O.",
    ]);
  });

  it("is a test's where a column dates it", () => {
    const { fleet } = read(
      `${HEAD},Last test,Result\nB1,Van 1,2023-03-01,2026-05-01,PASS\nB2,Van 2,2023-03-01,2026-05-02,weak\n`,
    );
    expect(fleet.runtimeTests.map(({ result }) => result)).toEqual(["pass", "fail"]);
    expect(fleet.packs.map((pack) => pack.held)).toEqual([null, null]);
  });

  it("is none where it is a figure, nor where the pads were tested", () => {
    const figures = read(`${HEAD},Test result\nB1,Van 1,2023-03-01,92\nB2,Van 2,2023-03-01,88\n`);
    expect(figures.fleet.packs.map((pack) => pack.held)).toEqual([null, null]);
    expect(figures.findings.map(({ code }) => code)).toEqual(["column-unread"]);
    expect(held(`${HEAD},Pad result\nB1,Van 1,2023-03-01,FAIL\n`)).toEqual([null]);
  });

  it("tells a word that it does not know", () => {
    const { findings, fleet } = read(`${HEAD},Result\nB1,Van 1,2023-03-01,perhaps\nB2,Van 2,2023-03-01,pass\n`);
    expect(findings.map(({ code, line }) => [code, line])).toEqual([["status-unknown", 2]]);
    expect(fleet.packs).toHaveLength(2);
  });
});
