import { expect, it } from "vitest";
import type { Plan } from "../../src/out/plan-schema.ts";
import { leastCertain } from "../../web/least-certain.ts";
import { aPlan } from "../out/a-plan.ts";

type Dates = Partial<Plan["packs"][number]["replaceBy"]>;

const [first] = aPlan().packs;
const packs = (...dates: Dates[]) => dates.map((of) => ({ ...first!, replaceBy: { ...first!.replaceBy, ...of } }));

// The plan looks from November 2026 to October 2027. By hand, in days between early and late dates.
it("counts packs of which the early date lies in the plan and the late one more than a year after it", () => {
  const plan = aPlan({
    packs: packs(
      { p10: "2026-11-01", p90: "2027-11-01" }, // 365: a year and no more
      { p10: "2026-11-01", p90: "2027-11-02" }, // 366
      { kind: "already-due", p10: "2026-11-01", p50: "2026-11-01", p90: "2031-07-25" }, // due now, maybe
      { kind: "beyond-horizon", p10: "2027-10-31", p50: "2031-03-15", p90: "2036-05-08" }, // maybe in the last month
      { kind: "beyond-horizon", p10: "2027-11-01", p50: "2031-03-15", p90: "2036-05-08" }, // after the plan
      { p10: "2026-12-01", p90: null }, // late: later than can be told
      { kind: "no-forecast", p10: null, p50: null, p90: null },
    ),
  });
  expect(leastCertain(plan)).toMatchObject({ packs: 7, noForecast: 1, wide: 4 });
});

it("counts packs without readings only where something is forecast of them", () => {
  const [pack] = packs({});
  const typical = { ...pack!, basis: "typical" as const };
  const none = packs({ kind: "no-forecast", p10: null, p50: null, p90: null })[0]!;
  const plan = aPlan({ packs: [pack!, typical, { ...none, basis: "typical" }] });
  expect(leastCertain(plan)).toMatchObject({ packs: 3, typical: 1, noForecast: 1 });
});
