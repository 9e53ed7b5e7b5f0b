import { addMonths, dayFromIso } from "../calendar/day.ts";
import type { Plan } from "./plan-schema.ts";

type Line = Plan["orders"][number];

/** Months between one plan and the next, as the plan is meant to be used. */
const PLANNED_ANEW_EVERY_MONTHS = 1;

/**
 * Whether a line leaves only after the next plan will have been made: it tells what to expect, and is not to be ordered
 * yet.
 */
export function isForecast(line: Line, asOf: string): boolean {
  return dayFromIso(line.orderBy)! > addMonths(dayFromIso(asOf)!, PLANNED_ANEW_EVERY_MONTHS);
}

/** What the mark of such a line means, wherever it stands. */
export const FORECAST_NOTE =
  "A line marked forecast leaves after the next plan, which may change it: do not order it yet.";

/** Whether the line has a price. The plan holds an unknown one as nought, which a buyer would read as free. */
export function isPriced(line: Line): boolean {
  return line.lineCost > 0;
}
