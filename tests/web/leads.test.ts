import { describe, expect, it } from "vitest";
import { say } from "../../web/strings.ts";

describe("sentences that lead a section in", () => {
  it("orders: what they are, what they cost, and what is late", () => {
    expect(say.orders.lead(84, 29, "€48,597", 3)).toBe(
      "84 order lines in 29 orders for €48,597 with fees. 3 lines are late and should leave today.",
    );
    expect(say.orders.lead(1, 1, "", 1)).toBe("1 order line in 1 order. 1 line is late and should leave today.");
    expect(say.orders.lead(2, 1, "", 0)).toBe("2 order lines in 1 order.");
  });

  it("dates: what is overdue apart from what has expired", () => {
    expect(say.dates.lead(421, "October 2029", 0, 0)).toBe("421 dated units fall due by the end of October 2029.");
    expect(say.dates.lead(421, "October 2029", 2, 2)).toMatch(/2 more have expired and should be swapped now\.$/);
    expect(say.dates.lead(421, "October 2029", 1, 0)).toMatch(/1 more is overdue and should be swapped now\.$/);
    expect(say.dates.lead(421, "October 2029", 5, 1)).toMatch(
      /5 more are overdue and should be swapped now; 1 of them has expired\.$/,
    );
  });

  it("batteries: how many packs are due by when, each at its likely date", () => {
    const { lead, now, by } = say.batteries;
    expect(lead(10, [now(3), by(6, "October 2027"), by(9, "October 2029")])).toBe(
      "10 packs: 3 due now, 6 by the end of October 2027 and 9 by the end of October 2029, each counted at its likely date.",
    );
    expect(lead(1, [now(0), by(1, "October 2027")])).toBe(
      "1 pack: 0 due now and 1 by the end of October 2027, each counted at its likely date.",
    );
  });

  it("ahead: the worst month's end, without a word that most devices are short", () => {
    expect(say.ahead.short.worst("1.2", "November 2026")).toBe(
      " With the schedule the worst month's end is that of November 2026: 1.2 are expected.",
    );
  });

  it("visits: that fewer are too few, where there are fewer", () => {
    const { caption } = say.dates.visits;
    expect(caption(2, "30", 3)).toContain("With fewer than 2 a month, not every expiry can be met; with 2, some units");
    expect(caption(1, "30", 2)).toContain("in one month. With 1, some units");
  });
});
