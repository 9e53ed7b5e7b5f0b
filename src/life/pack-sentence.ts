import { type Day, isoFromDay, partsOfDay } from "../calendar/day.ts";
import type { FadingPack } from "../fade/fade-items.ts";
import type { CapacityBand } from "../fade/types.ts";
import type { PackRow } from "../fleet/rows.ts";
import type { EndCause, PackLife } from "./types.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

const inWords = (day: Day) => `${MONTHS[partsOfDay(day).month - 1]} ${partsOfDay(day).year}`;
const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;

const LIMIT_WORDS: Record<Exclude<EndCause, "fade" | "failed-test">, string> = {
  failure: "sudden failure",
  age: "the age limit",
  cycles: "the cycle limit",
  "use-by": "its use-by date",
  "service-life": "the end of its service life",
};

/**
 * One plain sentence for a pack, with the figures of its forecast.
 *
 * @param threshold  fraction of rated at which the pack is due
 */
export function packSentence(
  pack: PackRow,
  fading: FadingPack | null,
  now: CapacityBand | null,
  life: Pick<PackLife, "belowBy" | "replaceBy"> & { failedOn: Day | null },
  threshold: number,
): string {
  const { belowBy, replaceBy } = life;
  const tests = fading?.readings.readings ?? [];
  const last = tests.at(-1);
  const known =
    last === undefined
      ? "Never measured"
      : `${percent(last.capacity)} at the last of ${tests.length === 1 ? "1 test" : `${tests.length} tests`} in ${inWords(last.day)}`;
  if (replaceBy.because === "failed-test") {
    return `Failed its test on ${isoFromDay(life.failedOn!)} and no later test has cleared it: due now.`;
  }
  if (belowBy.kind === "no-forecast" && replaceBy.p50 === null) {
    return `${known}; no forecast: ${replaceBy.note ?? "nothing to go by"}.`;
  }
  if (replaceBy.because !== null && replaceBy.because !== "fade") {
    const when = replaceBy.kind === "already-due" ? "has passed" : `comes in ${inWords(replaceBy.p50!)}`;
    return `${known}; ${LIMIT_WORDS[replaceBy.because]} ${when}${before(belowBy, replaceBy.p50!)}.`;
  }
  if (belowBy.kind === "already-due") {
    const estimate = now === null ? "" : `, now about ${percent(now.p50)}`;
    return `${known}${estimate}: more likely than not below ${percent(threshold)} already.`;
  }
  if (belowBy.p50 === null) return `${known}; not expected below ${percent(threshold)} within 30 years.`;
  const from = belowBy.p10 === null ? "" : belowBy.p10 <= belowBy.p50 - 31 ? ` (80 % range ${range(belowBy)})` : "";
  const basis = last === undefined ? `, going by ${pack.item ?? "packs"} in general` : "";
  return `${known}; likely below ${percent(threshold)} by ${inWords(belowBy.p50)}${from}${basis}.`;
}

function range({ p10, p90 }: PackLife["belowBy"]): string {
  return `${inWords(p10!)} to ${p90 === null ? "never" : inWords(p90)}`;
}

function before(belowBy: PackLife["belowBy"], limitDay: Day): string {
  if (belowBy.p50 === null || belowBy.kind === "no-forecast") return "";
  return belowBy.p50 > limitDay ? `, before fade (${inWords(belowBy.p50)})` : "";
}
