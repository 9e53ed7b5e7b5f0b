import type { Plan } from "../src/index.ts";
import type { PolicyWords } from "./engine/messages.ts";
import { dayWords, moneyWords, numberWords, sentenceWords } from "./format.ts";
import { likelyDueBy } from "./packs-due-by-month.ts";
import { say } from "./strings.ts";

export interface Difference {
  what: string;
  before: string;
  now: string;
  /** How much more or less, with its sign; a dash where there is no such amount. */
  change: string;
}

/** A policy key as the page names it. */
export function keyName(key: string): string {
  return say.assumptions.names[key] ?? key.replaceAll("_", " ");
}

/** What differs between two plans, measure by measure; measures that agree are left out. The words tell an assumption's unit. */
export function differences(before: Plan, now: Plan, words: readonly PolicyWords[]): Difference[] {
  // where neither puts anything off, "within the budget" is the schedule once more
  const isCapped = before.deferrals.length + now.deferrals.length > 0;
  const first = measures(before, isCapped);
  const second = measures(now, isCapped);
  const policies = policyDifferences(before, now, words);
  const names = [...new Set([...first.keys(), ...second.keys()])];
  const brought = names
    .map((what) => {
      const [one, other] = [first.get(what), second.get(what)];
      return { what, before: one?.text ?? say.none, now: other?.text ?? say.none, change: changeInWords(one, other) };
    })
    .filter((row) => row.before !== row.now);
  return [...policies, ...brought];
}

/** The assumptions in which two plans differ: two policies side by side, above what they lead to. */
function policyDifferences(before: Plan, now: Plan, words: readonly PolicyWords[]): Difference[] {
  const text = (plan: Plan, key: string) => sentenceWords(String(plan.policy[key] ?? say.none));
  return [...new Set([...Object.keys(before.policy), ...Object.keys(now.policy)])]
    .map((key) => ({
      what: say.assumptions.measures.assumption(keyName(key), words.find((policy) => policy.key === key)?.unit ?? ""),
      before: text(before, key),
      now: text(now, key),
      change: say.none,
    }))
    .filter((row) => row.before !== row.now);
}

/** What a measure says, and its amount where it has one that can be told as more or less. */
interface Measure {
  text: string;
  amount: number | null;
  inWords: (amount: number) => string;
}

function measures(plan: Plan, isCapped: boolean): Map<string, Measure> {
  const words = say.assumptions.measures;
  const found = new Map<string, Measure>();
  const put = (what: string, amount: number, inWords: Measure["inWords"] = numberWords) =>
    found.set(what, { text: inWords(amount), amount, inWords });
  const tenths = (amount: number) => numberWords(amount, 1);
  // in the tenths that are told, so that the change is the difference of what stands beside it
  const most = (of: (month: Plan["short"][number]) => number) =>
    Math.round(Math.max(0, ...plan.short.map(of)) * 10) / 10;
  const first = plan.orders.map(({ orderBy }) => orderBy).sort()[0];
  put(words.due, likelyDueBy(plan, plan.horizon.to));
  put(
    words.short,
    most(({ withSchedule }) => withSchedule.expected),
    tenths,
  );
  if (isCapped) {
    put(words.deferred, new Set(plan.deferrals.map(({ line }) => line)).size);
    put(
      words.within,
      most(({ withinBudget, withSchedule }) => (withinBudget ?? withSchedule).expected),
      tenths,
    );
  }
  put(words.lines, plan.orders.length);
  put(words.late, plan.orders.filter((order) => order.late).length);
  found.set(words.first, { text: first ? dayWords(first) : say.none, amount: null, inWords: String });
  const currencies = [...new Set(plan.budget.map(({ currency }) => currency))];
  for (const currency of currencies) {
    const years = plan.budget.filter((year) => year.currency === currency);
    const money = (amount: number) => moneyWords(amount, currency);
    for (const year of years) put(words.spend(year.fiscalYear, currency), year.planned, money);
    if (years.length > 1)
      put(
        words.allSpend(currency),
        years.reduce((sum, { planned }) => sum + planned, 0),
        money,
      );
  }
  const units = new Map<string, number>();
  for (const order of plan.orders) units.set(order.item, (units.get(order.item) ?? 0) + order.quantity);
  for (const [item, count] of units) put(words.units(item), count);
  return found;
}

function changeInWords(before: Measure | undefined, now: Measure | undefined): string {
  const { amount, inWords } = now ?? before!;
  const change = (amount === null ? Number.NaN : (now?.amount ?? 0)) - (before?.amount ?? 0);
  if (Number.isNaN(change)) return say.none;
  return `${change < 0 ? "\u2212" : "+"}${inWords(Math.abs(change))}`;
}
