import type { Plan } from "../src/index.ts";
import { packsDueByMonth } from "./charts/packs-due.ts";
import { dayWords, moneyWords, numberWords } from "./format.ts";
import { say } from "./strings.ts";

export interface Difference {
  what: string;
  before: string;
  now: string;
}

/** A policy key as the page names it. */
export function keyName(key: string): string {
  return say.assumptions.names[key] ?? key.replaceAll("_", " ");
}

/** What differs between two plans, measure by measure; measures that agree are left out. */
export function differences(before: Plan, now: Plan): Difference[] {
  const first = measures(before);
  const second = measures(now);
  const policies = policyDifferences(before, now);
  const names = [...new Set([...first.keys(), ...second.keys()])];
  const brought = names
    .map((what) => ({ what, before: first.get(what) ?? say.none, now: second.get(what) ?? say.none }))
    .filter((row) => row.before !== row.now);
  return [...policies, ...brought];
}

/** The assumptions in which two plans differ: two policies side by side, above what they lead to. */
function policyDifferences(before: Plan, now: Plan): Difference[] {
  const text = (plan: Plan, key: string) => String(plan.policy[key] ?? say.none);
  return [...new Set([...Object.keys(before.policy), ...Object.keys(now.policy)])]
    .map((key) => ({
      what: say.assumptions.measures.assumption(keyName(key)),
      before: text(before, key),
      now: text(now, key),
    }))
    .filter((row) => row.before !== row.now);
}

function measures(plan: Plan): Map<string, string> {
  const words = say.assumptions.measures;
  const found = new Map<string, string>();
  const firstOrder = plan.orders.reduce<string | null>(
    (first, order) => (first === null || order.orderBy < first ? order.orderBy : first),
    null,
  );
  // as Batteries counts them
  const due = packsDueByMonth(plan).at(-1)?.expected ?? 0;
  const short = plan.short.reduce((most, month) => Math.max(most, month.withSchedule.expected), 0);
  found.set(words.due, numberWords(due));
  found.set(words.short, numberWords(short, 1));
  found.set(words.lines, numberWords(plan.orders.length));
  found.set(words.late, numberWords(plan.orders.filter((order) => order.late).length));
  found.set(words.first, firstOrder === null ? say.none : dayWords(firstOrder));
  for (const year of plan.budget) found.set(words.spend(year.fiscalYear), moneyWords(year.planned, year.currency));
  const units = new Map<string, number>();
  for (const order of plan.orders) units.set(order.item, (units.get(order.item) ?? 0) + order.quantity);
  for (const [item, count] of units) found.set(words.units(item), numberWords(count));
  return found;
}
