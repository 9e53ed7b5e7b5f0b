import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../../src/calendar/day.ts";
import { read } from "../sheet-file.ts";

/** What is where after checks of the lines "day,device,expiry". */
function there(lines: string): string[] {
  const { fleet } = read(`Date checked,AED,Adult pads exp\n${lines}`);
  return fleet.datedStock.map(({ place, expiry }) => `${place} ${isoFromDay(expiry)}`);
}

describe("a log of checks", () => {
  it("tells of what each place's last check found, in whatever order its lines stand", () => {
    const lines = ["2026-08-01,E-1,2027-05-31", "2026-10-01,E-1,2028-05-31", "2026-08-01,E-2,2027-06-30"];
    for (const inOrder of [lines, [...lines].reverse()])
      expect(there(`${inOrder.join("\n")}\n`).sort()).toEqual(["E-1 2028-05-31", "E-2 2027-06-30"]);
  });

  it("tells of nothing where the last check found none, and of the one before where it was not written down", () => {
    expect(
      there(`2026-08-01,E-1,2027-01-31
2026-08-01,E-2,2027-02-28
2026-08-01,E-3,2027-03-31
2026-08-01,E-4,2027-04-30
2026-10-01,E-1,none
2026-10-01,e-2,Missing
2026-10-01,E-3,
2026-07-01,E-4,none
`),
    ).toEqual(["E-3 2027-03-31", "E-4 2027-04-30"]);
  });
});
