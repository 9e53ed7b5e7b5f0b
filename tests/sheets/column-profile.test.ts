import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/sheets/grid.ts";
import { profileColumn } from "../../src/sheets/tables/profile.ts";

const profile = (...cells: Cell[]) =>
  profileColumn(
    cells.map((cell, at) => ({ line: at + 2, cells: [cell] })),
    0,
  );

describe("profileColumn", () => {
  it("tells dates from numbers, and the days between which the dates lie", () => {
    const found = profile("2027-03-01", "05.03.2027", "17", "");
    expect(found).toMatchObject({ filled: 3, dates: 2 / 3, numbers: 1 / 3, nothing: 1 / 4 });
    expect(found.latest - found.earliest).toBe(4);
  });

  it("tells what whole numbers count: the rows, or a few of a thing at each place, with a word or without", () => {
    expect(profile("1", "2", "3")).toMatchObject({ counts: true, fewEach: true, severalEach: true, worded: false });
    expect(profile("2", "1", "1")).toMatchObject({ counts: false, severalEach: true });
    expect(profile("1 monitor", "1 monitor")).toMatchObject({ fewEach: true, severalEach: false, worded: true });
    expect(profile("95", "80", "100")).toMatchObject({ levels: true, thousands: false });
    expect(profile("2400", "61000")).toMatchObject({ levels: false, thousands: true, fewEach: false });
  });

  it("takes the unit that more than half of the cells carry", () => {
    expect(profile("2.1 Ah", "1.9Ah", "3").unit).toBe("ah");
    expect(profile("2.1 Ah", "3").unit).toBe("");
  });

  it("takes no's for answers only where a yes stands among them", () => {
    expect(profile("yes", "no", "n", "2")).toMatchObject({ yesNo: 3 / 4 });
    expect(profile("no", "n")).toMatchObject({ yesNo: 0 });
  });

  it("says nothing of cells that are empty", () => {
    const none = {
      filled: 0,
      nothing: 1,
      dates: 0,
      distinct: 0,
      unit: "",
      measures: 0,
      thousands: false,
      fewEach: false,
    };
    expect(profile("", null)).toMatchObject(none);
    expect(profile()).toMatchObject(none);
  });
});
