import { describe, expect, it } from "vitest";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith } from "./made-up.ts";

const planned = (minLifeDays: number, needs: number[]) => {
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Gel", arrivesWithMonths: 2 })] });
  const policy = policyWith({ horizonMonths: needs.length, minLifeDays });
  const { orders, cautions } = scheduleOrders(fleet, policy, [certainDemand("Gel", needs)], []);
  return { units: orders.reduce((sum, { quantity }) => sum + quantity, 0), cautions };
};

describe("what arrives with little life", () => {
  // By hand: needed on 1 March 2027, there on 15 February, it lasts to 30 April: 60 days from the need
  it("is said to be ordered in vain where it may no longer be fitted when it is needed", () => {
    expect(planned(60, [0, 0, 0, 0, 5])).toEqual({ units: 5, cautions: [] });
    const { units, cautions } = planned(61, [0, 0, 0, 0, 5]);
    expect(units).toBe(5);
    expect(cautions).toEqual([
      expect.stringContaining(
        "Gel can only be ordered in vain for some months: what arrives lapses before it can be fitted.",
      ),
    ]);
  });

  // By hand: ordered on 25 November it is there on 25 December and lasts to 28 February, less 61 days to 29 December: not to
  // January's needs; what can leave in time comes for those of 1 February, to leave on 19 December
  it("is said not to be planned where no order reaches a month", () => {
    const { units, cautions } = planned(61, [0, 0, 5, 0, 0]);
    expect(units).toBe(0);
    expect(cautions).toEqual([expect.stringContaining("Gel cannot be ordered at all: what arrives lapses")]);
  });
});
