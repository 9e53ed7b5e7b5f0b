import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { monthText } from "../../src/calendar/month.ts";
import type { CatalogueRow } from "../../src/fleet/rows.ts";
import type { Offer } from "../../src/orders/offers.ts";
import { type PlannedLine, shareFees } from "../../src/orders/order-lines.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith } from "./made-up.ts";

describe("shareFees", () => {
  const shares = (
    fee: number,
    freeOver: number | null,
    ...lines: [order: string, cost: number, currency: string][]
  ) => {
    const offer = { fee, freeOver } as Offer;
    const planned = lines.map(([order, lineCost, currency]) => {
      return { offer, line: { order, lineCost, currency, feeShare: 0 } as OrderLine } as PlannedLine;
    });
    shareFees(planned);
    return planned.map(({ line }) => line.feeShare);
  };

  // By hand: of 100, thirds are 33 and 67; of three like lines one bears the last cent
  it("shares an order's fee by cost, to the last cent", () => {
    expect(shares(100, null, ["A", 10, "EUR"], ["A", 20, "EUR"])).toEqual([33, 67]);
    expect(shares(100, null, ["A", 10, "EUR"], ["A", 10, "EUR"], ["A", 10, "EUR"])).toEqual([34, 33, 33]);
    expect(shares(100, null, ["A", 0, "EUR"], ["A", 10, "EUR"])).toEqual([0, 100]);
    expect(shares(101, null, ["A", 0, "EUR"], ["A", 0, "EUR"])).toEqual([51, 50]);
  });

  it("charges every order its own, and none from the free limit on", () => {
    expect(shares(100, 30, ["A", 10, "EUR"], ["B", 30, "EUR"], ["A", 19, "EUR"])).toEqual([34, 0, 66]);
    expect(shares(100, 30, ["A", 10, "EUR"], ["A", 20, "EUR"])).toEqual([0, 0]);
  });

  it("adds up no two currencies", () => {
    expect(shares(100, 30, ["A", 10, "EUR"], ["A", 20, "USD"])).toEqual([100, 100]);
  });
});

describe("a line", () => {
  const linesFor = (needs: number[], row: Partial<CatalogueRow>) => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads", ...row })] });
    return scheduleOrders(fleet, policyWith({ horizonMonths: needs.length }), [certainDemand("Pads", needs)], [])
      .orders;
  };

  /*
   * By hand: an order of 25 November 2026 with 37 days of lead arrives on 1 January 2027, when January's 4 are needed, and the
   * 2 and 3 of the months before wait for it; with 38 days January's wait, too.
   */
  it.each([
    [37, 5, "2026-12-31"],
    [38, 9, "2027-01-01"],
  ])("that is late by %i days of lead leaves %i units missing until %s", (leadDays, missing, until) => {
    const [line] = linesFor([2, 3, 4], { leadDays });
    expect([line!.quantity, isoFromDay(line!.uncoveredUntil!)]).toEqual([9, until]);
    expect(line!.reason).toContain(`up to ${missing} units may be missing until ${until}.`);
  });

  // By hand: with no lead, what November needs at as-of is there on that day, late only against the 14 days of safety
  it("that arrives on the day of the need leaves nothing uncovered", () => {
    const [line] = linesFor([2, 0], { leadDays: 0 });
    expect([line!.late, line!.uncoveredUntil]).toEqual([true, null]);
    expect(line!.reason).toContain("part of the safety days is used up");
  });

  /*
   * By hand: boxes of 5 for needs of 3 a month from February on. The first covers February, and of March 2 of 3; so the second
   * covers March and, with 4 left of 10 after February and March, April, and May as far as 1 of 3.
   */
  it("covers from the first month that the lines before do not cover to the last that it covers whole", () => {
    const told = linesFor([0, 0, 0, 3, 3, 3, 3], { unitsPerBox: 5 }).map(({ covers, quantity, boxes }) => {
      return [monthText(covers.from), monthText(covers.to), quantity, boxes];
    });
    expect(told).toEqual([
      ["2027-02", "2027-02", 5, 1],
      ["2027-03", "2027-04", 5, 1],
      ["2027-05", "2027-05", 5, 1],
    ]);
  });
});
