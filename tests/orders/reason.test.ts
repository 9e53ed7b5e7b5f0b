import { describe, expect, it } from "vitest";
import { monthFromText } from "../../src/calendar/month.ts";
import type { Offer } from "../../src/orders/offers.ts";
import { type LineFacts, reasonFor } from "../../src/orders/reason.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import { day } from "./made-up.ts";

/** What is said of so many units that cover December to January, leave in time and leave nothing over. */
function reason(
  quantity: number,
  line: Partial<OrderLine> = {},
  offer: Partial<Offer> = {},
  facts: Partial<LineFacts> = {},
) {
  const { unitsPerBox = 1 } = offer;
  return reasonFor(
    {
      quantity,
      boxes: quantity / unitsPerBox,
      covers: { from: monthFromText("2026-12"), to: monthFromText("2027-01") },
      currency: "EUR",
      expectedWaste: 0,
      late: false,
      ...line,
    } as OrderLine,
    {
      offer: { kind: "pads", priced: true, unitsPerBox, ...offer } as Offer,
      level: 0.95,
      offCadence: false,
      risk: { lower: null, expectedLeft: 0 },
      tooLate: 0,
      missing: 0,
      stopgaps: [],
      ...facts,
    },
  );
}

// Each sentence worked out by hand from what stands before it: the singular, the year's end, and what is left unsaid
describe("why a line is there", () => {
  it("tells the months, across the year's end, and a level between two percents", () => {
    expect(reason(2)).toBe("Covers December 2026 to January 2027 at 95 %: 2 units.");
    expect(reason(1, {}, { kind: "pack" }, { level: 0.9995 })).toMatch(/ at 99\.95 %: 1 pack\.$/);
    expect(reason(1, {}, { priced: false })).toMatch(/: 1 unit\. No price is known\.$/);
  });

  it("counts boxes, and what a lower level would save or cost", () => {
    const at = (boxes: number, saves: number, unitsPerBox: number, currency = "EUR") =>
      reason(10, { currency }, { unitsPerBox }, { risk: { lower: { level: 0.8, boxes, saves }, expectedLeft: 0 } });
    expect(at(1, 3850, 10)).toContain("Bought as 1 box of 10. At 80 % it would be 1 box fewer, EUR 38.50 less.");
    expect(at(1, 0, 1)).toMatch(/: 10 units\. At 80 % it would be 1 unit fewer\.$/);
    expect(at(2, -100, 5)).toMatch(/2 boxes fewer, but EUR 1\.00 more, since it would miss a price break\.$/);
    // ISO 4217's code for no currency names none to a buyer
    expect(at(1, 3850, 1, "XXX")).toMatch(/ 1 unit fewer, 38\.50 less\.$/);
  });

  it("tells one unit left and one that lapses as one, and half a unit as none or one", () => {
    const left = (expectedLeft: number) => reason(3, {}, {}, { risk: { lower: null, expectedLeft } });
    expect(left(0.49)).toMatch(/: 3 units\.$/);
    expect(left(0.5)).toMatch(/ 1 unit is expected to be left then\.$/);
    const late = reason(3, {}, { kind: "pack" }, { tooLate: 1, risk: { lower: null, expectedLeft: 1 } });
    expect(late).toMatch(/ left then\. On order, but too late for December 2026: 1 pack; ask for an earlier day\.$/);
    expect(left(2)).toMatch(/ 2 units are expected to be left then\.$/);
    expect(reason(3, { expectedWaste: 1 })).toMatch(/ Of these, 1 unit cannot be needed before it lapses\.$/);
    expect(reason(3, { expectedWaste: 2 })).toMatch(/ Of these, 2 units cannot be needed before they lapse\.$/);
  });

  it("says of a late line what may be missing until it arrives, and nothing of it where only safety days are gone", () => {
    const late = { late: true, arriveBy: day("2027-01-01"), uncoveredUntil: day("2026-12-31") };
    const told = { missing: 1, stopgaps: ["1 unit here", "2 units there"], offCadence: true };
    expect(reason(3, late, {}, told)).toMatch(
      / Late: it arrives on 2027-01-01 at the earliest; up to 1 unit may be missing until 2026-12-31\. Until then: 1 unit here; 2 units there\. It leaves outside the supplier's order calendar\.$/,
    );
    expect(reason(3, { ...late, uncoveredUntil: null }, {}, { stopgaps: ["x"] })).toMatch(
      / Late: the day on which it should have left has passed, and part of the safety days is used up\.$/,
    );
    expect(reason(3, {}, {}, told)).toMatch(/: 3 units\.$/);
  });
});
