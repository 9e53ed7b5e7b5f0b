import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { dayFromIso } from "../src/calendar/day.ts";
import { type Remembered, rememberStages } from "../src/fleet/policy-reads.ts";
import { resolvePolicy } from "../src/fleet/resolve-policy.ts";
import type { Fleet } from "../src/fleet/rows.ts";
import { type Plan, planSchema } from "../src/out/plan-schema.ts";
import { writePlanJson } from "../src/out/write-plan-json.ts";
import { makePlan } from "../src/plan.ts";
import { policyChoicesIn } from "../src/sheets/policy-choices.ts";
import { readSheets } from "../src/sheets/read-sheets.ts";
import type { Reading } from "../src/sheets/reading.ts";

const SAMPLE = resolve(import.meta.dirname, "../sample-data");
const files = readdirSync(SAMPLE)
  .filter((name) => name.endsWith(".csv"))
  .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(SAMPLE, name))) }));
const choices = policyChoicesIn(files);
const { policy } = resolvePolicy(choices, 0);
const reading = readSheets(files, { asOf: policy.asOf, dateOrder: null });

const bytesOf = (plan: Plan) => [...writePlanJson(plan)].join("");
const withFleet = (change: (fleet: Fleet) => Partial<Fleet>): Reading => ({
  ...reading,
  fleet: { ...reading.fleet, ...change(reading.fleet) },
});

describe("makePlan on the sample fleet", () => {
  let plan: Plan;
  let bytes: string;
  beforeAll(() => {
    plan = makePlan(reading, policy);
    bytes = bytesOf(plan);
  });

  it("meets the plan's schema, strictly", () => {
    const read = planSchema.safeParse(JSON.parse(bytes));
    expect(read.error?.issues ?? []).toEqual([]);
  });

  it("gives the same bytes twice", () => {
    expect(bytesOf(makePlan(reading, policy))).toBe(bytes);
  });

  it("does not hang on the order of rows", () => {
    const turned = withFleet((fleet) => ({
      devices: [...fleet.devices].reverse(),
      packs: [...fleet.packs].reverse(),
      runtimeTests: [...fleet.runtimeTests].reverse(),
      datedStock: [...fleet.datedStock].reverse(),
      catalogue: [...fleet.catalogue].reverse(),
      useLog: [...fleet.useLog].reverse(),
      onOrder: [...fleet.onOrder].reverse(),
      routine: [...fleet.routine].reverse(),
      suppliers: [...fleet.suppliers].reverse(),
    }));
    expect(bytesOf(makePlan(turned, policy))).toBe(bytes);
  });

  it("holds its bands in order, and its causes to their sum", () => {
    for (const { belowBy, replaceBy, path, serial } of plan.packs) {
      for (const { p10, p50, p90 } of [belowBy, replaceBy]) {
        expect((p10 ?? "9") <= (p50 ?? "9"), serial).toBe(true);
        expect((p50 ?? "9") <= (p90 ?? "9"), serial).toBe(true);
      }
      path.p50.forEach((middle, m) => {
        expect(path.p10[m]!).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(path.p90[m]!);
      });
    }
    for (const { mean, causes, item } of plan.demand) {
      mean.forEach((units, m) => {
        const sum = Object.values(causes).reduce((total, cause) => total + cause[m]!, 0);
        // every figure is rounded to three digits: seven causes and their sum
        expect(Math.abs(sum - units), `${item} month ${m}`).toBeLessThanOrEqual(0.0041);
      });
    }
  });

  it("calls a pack due now, or within its months, by its likely date alone: so may be counted by either", () => {
    const { asOf, horizon } = plan;
    const kinds = plan.packs.map(({ replaceBy: { kind, p50 } }) => {
      const byDate =
        p50 === null ? [] : p50 <= asOf ? ["already-due"] : p50.slice(0, 7) <= horizon.to ? ["within-horizon"] : [];
      expect(byDate.length > 0 ? byDate : ["beyond-horizon", "no-forecast"], `${p50} ${asOf}`).toContain(kind);
      return kind;
    });
    expect(new Set(kinds)).toEqual(new Set(["already-due", "within-horizon", "beyond-horizon"]));
  });

  it("totals what its lines add up to", () => {
    for (const { fiscalYear, currency, planned, byItem } of plan.budget) {
      expect(
        byItem.reduce((sum, item) => sum + item.planned, 0),
        `${fiscalYear} ${currency}`,
      ).toBeLessThanOrEqual(planned);
    }
    const lines = plan.orders.reduce((sum, { lineCost, feeShare }) => sum + lineCost + feeShare, 0);
    expect(plan.budget.reduce((sum, { planned }) => sum + planned, 0)).toBe(lines);
  });

  it("is not changed by what came after as-of", () => {
    const later = policy.asOf + 40;
    const more = withFleet((fleet) => ({
      runtimeTests: [...fleet.runtimeTests, { ...fleet.runtimeTests[0]!, date: later, percent: 20 }],
      packs: fleet.packs.map((pack, i) =>
        i === 0 && pack.retired === null ? { ...pack, retired: later, retiredBecause: "faded" as const } : pack,
      ),
    }));
    const other = makePlan(more, policy);
    expect(other.packs).toEqual(plan.packs);
    expect(other.fadeGroups).toEqual(plan.fadeGroups);
  });

  it("never dates a pack later for a higher end of life", () => {
    const strict = makePlan(reading, { ...policy, endOfLifePercent: policy.endOfLifePercent + 6 });
    strict.packs.forEach((pack, i) => {
      for (const level of ["p10", "p50", "p90"] as const) {
        const was = plan.packs[i]!.replaceBy[level] ?? "9999";
        expect((pack.replaceBy[level] ?? "9999") <= was, `${pack.serial} ${level}`).toBe(true);
      }
    });
  });

  // with a fee to share, an item may leave early in another's company: the rule is about each item's own days
  it("never orders later for a longer lead, where no fee is shared", () => {
    const without = (extraDays: number) =>
      withFleet((fleet) => ({
        suppliers: fleet.suppliers.map((row) => ({ ...row, orderFee: null, freeOver: null })),
        catalogue: fleet.catalogue.map((row) => ({ ...row, leadDays: (row.leadDays ?? 0) + extraDays })),
      }));
    const firstOrder = (of: Plan) => {
      const first = new Map<string, string>();
      for (const { item, orderBy } of of.orders) first.set(item, [first.get(item) ?? orderBy, orderBy].sort()[0]!);
      return first;
    };
    // no battery wears by lead times and fees: one forecast of the packs serves both plans
    const remember = rememberStages();
    const sameLives: Remembered = (name, restsOn, ...rest) => remember(name, name === "life" ? [] : restsOn, ...rest);
    const before = firstOrder(makePlan(without(0), policy, sameLives));
    for (const [item, orderBy] of firstOrder(makePlan(without(30), policy, sameLives))) {
      expect(orderBy <= (before.get(item) ?? "9999"), item).toBe(true);
    }
  });

  it("shows the story of the sample: a late order, a crowd of pads, packs never tested", () => {
    expect(plan.asOf).toBe("2026-11-01");
    expect(dayFromIso(plan.asOf)).toBe(policy.asOf);
    expect(plan.orders.some((order) => order.late)).toBe(true);
    expect(plan.crowdedMonths.some((crowd) => crowd.item === "pads-adult")).toBe(true);
    expect(plan.packs.some((pack) => pack.readings === 0)).toBe(true);
  });
});
