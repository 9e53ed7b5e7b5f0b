import { monthFromText, monthText } from "../calendar/month.ts";
import { counted } from "../fleet/count-text.ts";
import type { Plan } from "./plan-schema.ts";

type Span = Pick<Plan, "asOf" | "horizon">;

/** Months in the plan's horizon. */
export function horizonLength(plan: Span): number {
  return (monthFromText(plan.horizon.to) ?? 0) - (monthFromText(plan.horizon.from) ?? 0) + 1;
}

/** The month so many months after the plan's first, as text. */
export function planMonth(plan: Span, index: number): string {
  return monthText((monthFromText(plan.horizon.from) ?? 0) + index);
}

/** "as of 2026-11-01, 36 months: 2026-11 to 2029-10" */
export function horizonText(plan: Span): string {
  return `as of ${plan.asOf}, ${counted(horizonLength(plan), "month")}: ${plan.horizon.from} to ${plan.horizon.to}`;
}

/** Index of the last month of the plan's first year, or of the horizon where that is shorter. */
export function firstYearEnd(plan: Span): number {
  return Math.min(12, horizonLength(plan)) - 1;
}
