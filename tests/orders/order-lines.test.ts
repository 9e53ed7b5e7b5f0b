import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { monthText } from "../../src/calendar/month.ts";
import type { CatalogueRow } from "../../src/fleet/rows.ts";
import type { Offer } from "../../src/orders/offers.ts";
import { type PlannedLine, shareFees } from "../../src/orders/order-lines.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import type { UsableLot } from "../../src/supplies/types.ts";
import { catalogueRow, certainDemand, day, fleetWith, policyWith, shelfLot } from "./made-up.ts";

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
  const linesFor = (needs: number[], row: Partial<CatalogueRow>, lots: UsableLot[] = []) => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads", ...row })] });
    return scheduleOrders(fleet, policyWith({ horizonMonths: needs.length }), [certainDemand("Pads", needs)], lots)
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
  /*
   * By hand: 4 are needed on 1 January and 4 come on 10 February. What is bought for January leaves them over, where they are not
   * needed in March; those that come in time for January are no line's.
   */
  it("tells what is on order and comes too late for its first month, where as many are left", () => {
    const comes = (iso: string) => shelfLot({ item: "Pads", quantity: 4, availableFrom: day(iso), origin: "on-order" });
    const reasons = (needs: number[], lot: UsableLot, row: Partial<CatalogueRow> = {}) =>
      linesFor(needs, { leadDays: 10, ...row }, [lot]).map(({ reason }) => reason);
    expect(reasons([0, 0, 4, 0, 0], comes("2027-02-10"))).toEqual([
      "Covers January to March 2027 at 95 %: 4 units. 4 units are expected to be left then. On order, but too late for January 2027: 4 units; ask for an earlier day.",
    ]);
    expect(reasons([0, 0, 4, 0, 4], comes("2027-02-10"))).toEqual(["Covers January to March 2027 at 95 %: 4 units."]);
    // of five bought at the least for two that those on order leave in January
    expect(reasons([0, 0, 6, 0, 0], comes("2027-01-01"), { minimumOrder: 5 })).toEqual([
      "Covers January to March 2027 at 95 %: 5 units. 3 units are expected to be left then.",
    ]);
  });

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
