import { describe, expect, it } from "vitest";
import type { Policy } from "../src/fleet/policy.ts";
import { rememberStages } from "../src/fleet/policy-reads.ts";
import { resolvePolicy } from "../src/fleet/resolve-policy.ts";
import { makePlan } from "../src/plan.ts";
import { policyChoicesIn } from "../src/sheets/policy-choices.ts";
import { readSheets } from "../src/sheets/read-sheets.ts";
import { SMALL_SHEETS } from "./browser/fixtures/small-sheets.ts";

const files = SMALL_SHEETS.map(({ name, buffer }) => ({ name, bytes: new Uint8Array(buffer) }));
const { policy } = resolvePolicy(policyChoicesIn(files), 0);
const reading = readSheets(files, { asOf: policy.asOf, dateOrder: null });

/** Another value for every key that decides anything once the sheets are read. */
const CHANGES: Partial<Policy>[] = [
  { serviceLevel: 0.8 },
  { holdingRatePerYear: 0.3 },
  { sparesPercent: 40 },
  { orderBeforeNeedDays: 60 },
  { priceRisePerYear: 0.05 },
  { fiscalYearStarts: 9 },
  { budgetPerFiscalYear: "500" },
  { swapBeforeExpiryDays: 45, minLifeDays: 45 },
  { minLifeDays: 90 },
  { swapsPerMonth: 2 },
  { useLogFrom: policy.asOf - 200 },
  { endOfLifePercent: 88 },
  { primaryEndPercent: 30 },
  { activationEnergyEv: 0.3 },
  { packMaxAgeMonths: 40 },
  { packMaxCycles: 60 },
  { horizonMonths: 18 },
  { asOf: policy.asOf + 31 },
  {},
];

describe("makePlan with the stages of earlier plans", () => {
  it("gives the plan that it gives without them, after a change of any policy value", () => {
    const remember = rememberStages();
    const first = makePlan(reading, policy, remember);
    expect(first.orders.length).toBeGreaterThan(0);
    for (const change of CHANGES) {
      const changed = { ...policy, ...change };
      expect(makePlan(reading, changed, remember), JSON.stringify(change)).toEqual(makePlan(reading, changed));
    }
  });

  it("keeps the packs' rows where only orders are touched", () => {
    const remember = rememberStages();
    const { packs } = makePlan(reading, policy, remember);
    expect(makePlan(reading, { ...policy, serviceLevel: 0.8 }, remember).packs).toBe(packs);
    expect(makePlan(reading, { ...policy, endOfLifePercent: 88 }, remember).packs).not.toBe(packs);
  });
});
