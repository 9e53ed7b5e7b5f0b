import { describe, expect, it } from "vitest";
import { isoOrNull } from "../../src/calendar/day.ts";
import { GRID_SIZE } from "../../src/fade/time-grid.ts";
import type { LifeLimit } from "../../src/life/life-limits.ts";
import { belowDates, causesByMonth, certainMonth, dueDates, type PackEnd } from "../../src/life/pack-end.ts";
import { day } from "../fleet/make-rows.ts";

/** In the middle of a month, with four months ahead: November to February. */
const AS_OF = day("2026-11-15");
const LAST_DAY = day("2027-02-28");
const MONTHS = 4;

const until = (iso: string, cause: LifeLimit["cause"] = "age"): LifeLimit => ({ day: day(iso), cause });
const end = (facts: Partial<PackEnd>): PackEnd => ({
  fade: null,
  lasting: null,
  failedOn: null,
  limit: null,
  ...facts,
});
/** Three in ten chances of having run down already, and no more after. */
const FADED = new Float64Array(GRID_SIZE).fill(0.3);

function told(of: PackEnd) {
  const { kind, p10, p50, p90, because } = dueDates(of, AS_OF, LAST_DAY);
  return [kind, isoOrNull(p10), isoOrNull(p50), isoOrNull(p90), because];
}

describe("a pack that a limit ends", () => {
  it.each([
    ["2026-10-01", "2026-11-15", "already-due", 0],
    ["2026-11-15", "2026-11-15", "already-due", 0],
    ["2026-11-30", "2026-11-30", "within-horizon", 0],
    ["2026-12-01", "2026-12-01", "within-horizon", 1],
    ["2027-02-28", "2027-02-28", "within-horizon", 3],
    ["2027-03-01", "2027-03-01", "beyond-horizon", MONTHS],
  ])("on %s is due on %s, %s, for certain by the end of month %i", (limit, due, kind, month) => {
    const of = end({ limit: until(limit) });
    expect(told(of)).toEqual([kind, due, due, due, "age"]);
    expect(certainMonth(of, AS_OF, MONTHS)).toBe(month);
  });

  it("has what came before the limit counted as such, and the rest as the limit's", () => {
    const of = end({ fade: FADED, limit: until("2027-01-01", "cycles") });
    expect(told(of)).toEqual(["within-horizon", "2026-11-15", "2027-01-01", "2027-01-01", "cycles"]);
    const { fade, limit, failure } = causesByMonth(Float64Array.of(0.3, 0.3, 1, 1), of, AS_OF);
    const rounded = (chances: Float64Array) => Array.from(chances, (chance) => Number(chance.toFixed(12)));
    expect(rounded(fade)).toEqual([0.3, 0, 0, 0]);
    expect(rounded(limit)).toEqual([0, 0, 0.7, 0]);
    expect([...failure]).toEqual([0, 0, 0, 0]);
  });
});

describe("a pack that is due for certain", () => {
  it("is so by a failed test above all, which counts as fade", () => {
    const of = end({ failedOn: day("2026-05-01"), limit: until("2026-01-01", "held") });
    expect(told(of)).toEqual(["already-due", "2026-11-15", "2026-11-15", "2026-11-15", "failed-test"]);
    expect(belowDates(of, AS_OF, LAST_DAY).kind).toBe("already-due");
    expect([...causesByMonth(Float64Array.of(1, 1, 1, 1), of, AS_OF).fade]).toEqual([1, 0, 0, 0]);
  });

  it("is so while it is held, which fade does not tell", () => {
    const of = end({ limit: until("2026-11-15", "held") });
    expect(told(of)[4]).toBe("held");
    expect(belowDates(of, AS_OF, LAST_DAY).kind).toBe("no-forecast");
    expect([...causesByMonth(Float64Array.of(1, 1, 1, 1), of, AS_OF).limit]).toEqual([1, 0, 0, 0]);
  });
});

it("sudden failure alone makes no forecast", () => {
  const of = end({ lasting: new Float64Array(GRID_SIZE).fill(0.2) });
  expect(told(of)).toEqual(["no-forecast", null, null, null, null]);
});
