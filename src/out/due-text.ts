import { counted } from "../fleet/count-text.ts";
import type { Plan } from "./plan-schema.ts";

type PackRow = Plan["packs"][number];

/** What ends a pack's life first, in words, by the plan's code for it. */
export const CAUSE_WORDS: Record<NonNullable<PackRow["replaceBy"]["because"]>, string> = {
  fade: "fade",
  "failed-test": "failed test",
  held: "held",
  failure: "sudden failure",
  age: "age limit",
  cycles: "cycle limit",
  "use-by": "use-by date",
  "service-life": "service life",
};

/** When a pack is due, for people: a date, "now", "after 2029-10" or "no forecast". */
export function dueText(pack: PackRow, lastMonth: string): string {
  const { kind, p50 } = pack.replaceBy;
  if (kind === "already-due") return "now";
  if (kind === "no-forecast") return "no forecast";
  return kind === "beyond-horizon" || p50 === null ? `after ${lastMonth}` : p50;
}

/** The months between which a pack is due with a chance of 80 %; a hyphen where there is nothing to doubt. */
export function dueRangeText({ replaceBy: { kind, p10, p90 } }: PackRow): string {
  if (kind === "no-forecast" || (p10 !== null && p10 === p90)) return "-";
  return `${p10?.slice(0, 7) ?? "never"} to ${p90?.slice(0, 7) ?? "never"}`;
}

/** What ends a pack's life first, in words. */
export function becauseText({ replaceBy: { because } }: PackRow): string {
  return because === null ? "-" : CAUSE_WORDS[because];
}

/** Likely capacity today in whole percent of rated, or a hyphen. */
export function capacityText({ capacityNow }: PackRow): string {
  return capacityNow === null ? "-" : `${Math.round(capacityNow.p50 * 100)} %`;
}

/** What the forecast rests on: "measured, 6 tests". */
export function basisText({ basis, readings }: PackRow): string {
  return `${basis}, ${counted(readings, "test")}`;
}
