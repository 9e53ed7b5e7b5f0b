import { describe, expect, it } from "vitest";
import { monthOfDay } from "../../src/calendar/month.ts";
import { type EnteringPack, endMonth, packNeeds } from "../../src/demand/pack-needs.ts";
import { itemBook } from "../../src/fleet/item-book.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { whoTakes } from "../../src/fleet/who-takes.ts";
import { day, device, pack } from "../fleet/make-rows.ts";
import { certainIn, madeUpLife } from "./made-up-life.ts";

const ITEM = "Pack";
const AS_OF = day("2026-11-25");
const MONTHS = 6;

/** Needs of packs that fall due in given months for certain, where every new pack lasts two months. */
function needsOf(
  due: { month: number; device?: string; because?: "fade" | "failure" }[],
  entering: EnteringPack[] = [],
) {
  const packs = due.map(({ month, device: at = null }, n) => {
    return { item: ITEM, due: [certainIn(month, MONTHS)], row: pack(`S${n}`, { item: ITEM, device: at }) };
  });
  const life = madeUpLife(MONTHS, packs, (_, months) => (months >= 2 ? 1 : 0));
  life.packs.forEach(({ causes }, n) => {
    if (due[n]!.because === "failure") [causes.fade, causes.failure] = [causes.failure, causes.fade];
  });
  const fleet: Fleet = {
    ...emptyFleet(),
    devices: [device("D1", { retired: day("2027-02-01") }), device("D2", { retired: day("2027-02-02") })],
  };
  const book = itemBook(fleet, [ITEM]);
  const inService = due.map((_, index) => index);
  const takes = whoTakes(fleet, book, AS_OF);
  const { needs, causes } = packNeeds(book.find(ITEM), life, { inService, entering }, takes, monthOfDay(AS_OF));
  const counts = Array.from({ length: MONTHS }, (_, month) => {
    const path = new Int32Array(MONTHS);
    needs.addPath(0, () => 0.5, path);
    return path[month]!;
  });
  const told = Object.fromEntries(Object.entries(causes).map(([cause, units]) => [cause, [...units!]]));
  return { counts, causes: told };
}

const NONE = [0, 0, 0, 0, 0, 0];

describe("endMonth", () => {
  // By hand: needs fall on as-of and on the first of each later month; those before the day of leaving are left
  it.each([
    [null, 6],
    ["2026-11-26", 1],
    ["2026-12-01", 1],
    ["2026-12-02", 2],
    ["2027-01-01", 2],
    ["2027-04-01", 5],
    ["2027-04-02", 6],
    ["2029-01-01", 6],
  ])("of a device that leaves on %j is %i", (retired, end) => {
    expect(endMonth(retired === null ? null : day(retired), monthOfDay(AS_OF), MONTHS)).toBe(end);
  });
});

describe("packNeeds", () => {
  // By hand: a pack due in the second month is replaced by one that lasts two months, and so on
  it("counts a pack's first need and its renewals, all for one cause where there is one", () => {
    expect(needsOf([{ month: 1 }])).toEqual({
      counts: [0, 1, 0, 1, 0, 1],
      causes: { fade: [0, 1, 0, 1, 0, 1], limit: NONE, failure: NONE, growth: NONE },
    });
  });

  /*
   * By hand: one pack fades in the first month and one fails in the second; renewals, of the third to the sixth month, are
   * told as one half each.
   */
  it("shares renewals among the causes of the first needs", () => {
    expect(needsOf([{ month: 0 }, { month: 1, because: "failure" }])).toEqual({
      counts: [1, 1, 1, 1, 1, 1],
      causes: {
        ...{ fade: [1, 0, 0.5, 0.5, 0.5, 0.5], failure: [0, 1, 0.5, 0.5, 0.5, 0.5] },
        ...{ limit: NONE, growth: NONE },
      },
    });
  });

  // By hand: devices leave on 1 and on 2 February: the need of that day is the latter's alone
  it("needs nothing more from the day on which the device leaves", () => {
    expect(needsOf([{ month: 1, device: "D1" }]).counts).toEqual([0, 1, 0, 0, 0, 0]);
    expect(needsOf([{ month: 1, device: "D2" }]).counts).toEqual([0, 1, 0, 1, 0, 0]);
  });

  // By hand: a new device brings a need in its first month, which is growth, and renewals; one that has left by then none
  it("counts the packs of new devices as growth", () => {
    const { counts, causes } = needsOf(
      [{ month: 5, because: "failure" }],
      [
        { enters: 1, chance: 1, cause: "growth", end: MONTHS },
        { enters: 2, chance: 1, cause: "growth", end: 2 },
        { enters: 2, chance: 1, cause: "growth", end: 3 },
      ],
    );
    expect(counts).toEqual([0, 1, 1, 1, 0, 2]);
    expect(causes).toEqual({ fade: NONE, limit: NONE, failure: [0, 0, 0, 1, 0, 2], growth: [0, 1, 1, 0, 0, 0] });
  });

  // By hand: one spare that is fitted by then for certain, and one with chance 1/4, are due in month 3 by their limit, once
  it("counts a spare that is fitted as due on its own day", () => {
    const { counts, causes } = needsOf(
      [],
      [1, 0.25].map((chance) => ({ enters: 3, chance, cause: "limit", end: 4 })),
    );
    expect(counts).toEqual([0, 0, 0, 1, 0, 0]);
    expect(causes).toEqual({ fade: NONE, limit: [0, 0, 0, 1.25, 0, 0], failure: NONE, growth: NONE });
  });
});
