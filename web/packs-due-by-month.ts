import type { Plan } from "../src/index.ts";
import { monthsBetween } from "./months.ts";

/** Packs due by a month's end: expected, and counted by their late (P90) and early (P10) dates. */
export interface PacksDueMonth {
  month: string;
  expected: number;
  late: number;
  early: number;
  /** Expected in the quarter to which the month belongs. */
  quarter: number;
}

/** Counts packs due by each month of the plan; all counts are cumulative but `quarter`. */
export function packsDueByMonth(plan: Plan): PacksDueMonth[] {
  const months = monthsBetween(plan.horizon.from, plan.horizon.to);
  const countsBy = (date: "p10" | "p90") => {
    const fallDue = new Map<string, number>();
    for (const { replaceBy } of plan.packs) {
      // What was due before the plan starts counts from its first month on.
      let month = replaceBy[date]?.slice(0, 7) ?? "9999";
      if (month < plan.horizon.from) month = plan.horizon.from;
      fallDue.set(month, (fallDue.get(month) ?? 0) + 1);
    }
    let soFar = 0;
    return months.map((month) => {
      soFar += fallDue.get(month) ?? 0;
      return soFar;
    });
  };
  const [late, early] = [countsBy("p90"), countsBy("p10")];
  const expected = months.map(() => 0);
  for (const { dueBy } of plan.packs) for (const index of months.keys()) expected[index]! += dueBy.chance[index] ?? 0;
  const quarters = new Map<string, number>();
  months.forEach((month, index) => {
    const step = (expected[index] ?? 0) - (expected[index - 1] ?? 0);
    quarters.set(quarterOf(month), (quarters.get(quarterOf(month)) ?? 0) + step);
  });
  return months.map((month, index) => ({
    month,
    expected: expected[index] ?? 0,
    late: late[index] ?? 0,
    early: early[index] ?? 0,
    quarter: quarters.get(quarterOf(month)) ?? 0,
  }));
}

/** How many packs are due by a day or the end of a month, each counted at its likely date. */
export function likelyDueBy({ packs }: Plan, until: string): number {
  return packs.filter(({ replaceBy: { p50 } }) => p50 !== null && p50.slice(0, until.length) <= until).length;
}

/** The quarter of a calendar year to which a month belongs. */
export function quarterOf(month: string): string {
  return `${month.slice(0, 4)}-${Math.ceil(Number(month.slice(5)) / 3)}`;
}
