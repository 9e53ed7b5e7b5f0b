import { expect, it } from "vitest";
import { isoFromDay } from "../../../src/calendar/day.ts";
import { read } from "../sheet-file.ts";

const TESTS = `serial,date,wh,minutes,load_w
B1,2026-05-01,131,,
B1,2026-05-02,130,,
B1,2026-05-03,,60,131
B1,2026-05-04,,60,130
B2,2026-05-05,200,,
`;

it("drops tests above 130 % of a rating of 100 Wh, whichever supplier's line gives it, and none of an item without one", () => {
  const lines = ["LX,pack,North,100", "LX,pack,South,", "MX,pack,North,"];
  for (const inOrder of [lines, [...lines].reverse()]) {
    const { fleet, setAside } = read({
      "catalogue.csv": `item,kind,supplier,rated_wh\n${inOrder.join("\n")}\n`,
      "packs.csv": "serial,item,device\nB1,LX,M-1\nB2,MX,M-2\n",
      "tests.csv": TESTS,
    });
    expect(fleet.runtimeTests.map(({ date }) => isoFromDay(date))).toEqual(["2026-05-02", "2026-05-04", "2026-05-05"]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([
      [2, "capacity-over-rated"],
      [4, "capacity-over-rated"],
    ]);
  }
});
