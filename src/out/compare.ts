import { monthFromText, monthText } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import { defaultPolicy } from "../fleet/policy.ts";
import { sortBy } from "../maths/sort-by.ts";
import { compareItems } from "./compare-items.ts";
import { compareOrders } from "./compare-orders.ts";
import { comparePacks } from "./compare-packs.ts";
import { compareSays } from "./compare-says.ts";
import type { Comparison, ShortOver, Spend } from "./comparison.ts";
import { ENGINE } from "./engine.ts";
import { policyRecord } from "./plan-head.ts";
import type { Plan } from "./plan-schema.ts";
import { roundUnits } from "./rounding.ts";
import { monthsOfYears } from "./spend-notes.ts";

/** A plan with the name that people know it by. */
export interface NamedPlan {
  label: string;
  plan: Plan;
}

/**
 * Two plans side by side: one fleet under two policies, or two saved plans of one fleet. Needs, orders and devices short
 * are counted over the months that both hold; money is compared within one currency and one fiscal year.
 */
export function comparePlans(a: NamedPlan, b: NamedPlan): Comparison {
  const months = sharedMonths(a.plan, b.plan);
  const parts: Omit<Comparison, "says"> = {
    format: "wanecast.compare/1",
    engine: ENGINE,
    plans: { a: headOf(a), b: headOf(b) },
    months,
    policy: policyChanges(a.plan, b.plan),
    inputs: inputChanges(a.plan, b.plan),
    spend: spendByYear(a.plan, b.plan),
    items: compareItems(a.plan, b.plan, months),
    short: { a: shortOf(a.plan, months), b: shortOf(b.plan, months) },
    packs: comparePacks(a.plan, b.plan),
    orders: compareOrders(a.plan, b.plan, months),
  };
  const { format, engine, plans, ...rest } = parts;
  return { format, engine, plans, says: compareSays(parts), ...rest };
}

function headOf({ label, plan }: NamedPlan): Comparison["plans"]["a"] {
  return { label, asOf: plan.asOf, horizon: plan.horizon };
}

function sharedMonths(a: Plan, b: Plan): Comparison["months"] {
  const from = Math.max(monthFromText(a.horizon.from)!, monthFromText(b.horizon.from)!);
  const to = Math.min(monthFromText(a.horizon.to)!, monthFromText(b.horizon.to)!);
  return from <= to ? { from: monthText(from), to: monthText(to) } : null;
}

function policyChanges(a: Plan, b: Plan): Comparison["policy"] {
  const keys = [...new Set([...Object.keys(a.policy), ...Object.keys(b.policy)])].sort();
  // a key that came after a plan was made had its default then
  const byDefault = policyRecord(defaultPolicy(0));
  const valueIn = ({ policy }: Plan, key: string) => ({ ...byDefault, ...policy })[key] ?? null;
  return keys.map((key) => ({ key, a: valueIn(a, key), b: valueIn(b, key) })).filter((row) => row.a !== row.b);
}

function inputChanges(a: Plan, b: Plan): Comparison["inputs"] {
  const keyed = (plan: Plan) => groupBy(plan.inputs, (one) => `${one.file}\n${one.sheet ?? ""}\n${one.table}`);
  const before = keyed(a);
  const after = keyed(b);
  return [...new Set([...before.keys(), ...after.keys()])].sort().flatMap((key) => {
    // files of several folders may have one name
    const ones = changed(before.get(key) ?? [], after.get(key) ?? []);
    const others = changed(after.get(key) ?? [], before.get(key) ?? []);
    return Array.from({ length: Math.max(ones.length, others.length) }, (_, at) => {
      const { file, sheet } = (ones[at] ?? others[at])!;
      return { file, sheet, a: ones[at]?.used ?? null, b: others[at]?.used ?? null };
    });
  });
}

/** Inputs whose bytes are not among those of the other plan. */
function changed(inputs: Plan["inputs"], others: Plan["inputs"]): Plan["inputs"] {
  const left = others.map(({ sha256 }) => sha256);
  return inputs.filter(({ sha256 }) => {
    const at = left.indexOf(sha256);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

function spendByYear(a: Plan, b: Plan): Comparison["spend"] {
  const years = [...a.budget, ...b.budget].map(({ fiscalYear, currency }) => ({ fiscalYear, currency }));
  const unique = [...new Map(years.map((year) => [`${year.fiscalYear}\n${year.currency}`, year])).values()];
  const find = (plan: Plan, year: { fiscalYear: string; currency: string }): Spend | null => {
    const row = plan.budget.find((one) => one.fiscalYear === year.fiscalYear && one.currency === year.currency);
    return row ? { planned: row.planned, p50: row.p50, p80: row.p80, p95: row.p95 } : null;
  };
  const [ofA, ofB] = [monthsOfYears(a), monthsOfYears(b)];
  return sortBy(unique, (year) => [year.fiscalYear, year.currency]).map((year) => ({
    ...year,
    months: { a: ofA.get(year.fiscalYear) ?? 0, b: ofB.get(year.fiscalYear) ?? 0 },
    a: find(a, year),
    b: find(b, year),
  }));
}

function shortOf(plan: Plan, months: Comparison["months"]): Comparison["short"]["a"] {
  const linesPutOff = new Set(plan.deferrals.map(({ line }) => line)).size;
  const isCapped = plan.short.some(({ withinBudget }) => withinBudget !== null);
  const within = (row: ShortRow) => row.withinBudget ?? row.withSchedule;
  return {
    ...shortOver(plan, months, (row) => row.withSchedule),
    withinBudget: isCapped ? { ...shortOver(plan, months, within), linesPutOff } : null,
  };
}

type ShortRow = Plan["short"][number];

function shortOver(
  plan: Plan,
  months: Comparison["months"],
  of: (row: ShortRow) => ShortRow["withSchedule"],
): ShortOver {
  const rows = plan.short.filter((row) => months !== null && row.month >= months.from && row.month <= months.to);
  let worst: ShortRow | null = null;
  let deviceMonths = 0;
  for (const row of rows) {
    deviceMonths += of(row).expected;
    if (of(row).expected > (worst === null ? 0 : of(worst).expected)) worst = row;
  }
  return {
    deviceMonths: roundUnits(deviceMonths),
    worst: worst === null ? 0 : of(worst).expected,
    worstMonth: worst?.month ?? null,
  };
}
