import { type Day, isoFromDay } from "../calendar/day.ts";
import { monthOfDayWords } from "../calendar/month-words.ts";
import type { CapacityBound } from "../fade/capacity-readings.ts";
import type { CapacityBand } from "../fade/types.ts";
import type { SiblingFacts } from "./sibling-facts.ts";
import { siblingWords } from "./sibling-words.ts";
import type { EndCause, PackLife } from "./types.ts";

const percent = (fraction: number, digits = 0) => `${Number((fraction * 100).toFixed(digits))} %`;
/** What was set, not measured: nobody looks for a pack below 78 % who asked for 77.5 %. */
const asSet = (fraction: number) => percent(fraction, 1);

const LIMIT_WORDS: Record<Exclude<EndCause, "fade" | "failed-test" | "held" | "failure">, string> = {
  age: "the age limit",
  cycles: "the cycle limit",
  "use-by": "its use-by date",
  "service-life": "the end of its service life",
};

/** What the sentence speaks of. */
export interface Told {
  /** Readings in the order of their days. */
  readings: readonly { day: Day; capacity: number }[];
  /** Whether the last of them lies too far off to count for much. */
  lastDoubted: boolean;
  /** The last test that gave no figure, only a capacity above or below which the pack was; null where none did. */
  lastBound: CapacityBound | null;
  /** What became of its siblings from there on; null where too few tell. */
  siblings: SiblingFacts | null;
  /** What is left now; null where it cannot be told. */
  now: CapacityBand | null;
  failedOn: Day | null;
  /** Why it may not be used; null where it may. */
  held: string | null;
  /** The day, after as-of, on which its device leaves service; null where none is set. */
  leaves: Day | null;
  /** Fraction at which the pack is due. */
  threshold: number;
  /** Whether the fraction is of a charge that does not come back. */
  primary: boolean;
}

/** One plain sentence for a pack, with the figures of its forecast. */
export function packSentence(told: Told, life: Pick<PackLife, "belowBy" | "replaceBy">): string {
  const leaves = told.leaves === null ? "" : `; its device leaves service on ${isoFromDay(told.leaves)}`;
  return `${forecastWords(told, life)}${leaves}.`;
}

function forecastWords(told: Told, life: Pick<PackLife, "belowBy" | "replaceBy">): string {
  const { belowBy, replaceBy } = life;
  const level = told.primary ? `${asSet(told.threshold)} of its charge` : asSet(told.threshold);
  const known = knownSoFar(told, belowBy.kind);
  if (replaceBy.because === "failed-test") {
    return `Failed its test on ${isoFromDay(told.failedOn!)} and no later test has cleared it: due now`;
  }
  if (replaceBy.because === "held") return `${known}; held (${told.held}): due now, until it is released`;
  if (belowBy.kind === "no-forecast" && replaceBy.p50 === null) {
    return `${known}; no forecast: ${replaceBy.note ?? "nothing to go by"}`;
  }
  if (replaceBy.because === "failure") {
    return `${known}; sudden failure is likelier to end it than anything else, by ${monthOfDayWords(replaceBy.p50!)}${before(belowBy, replaceBy.p50!)}`;
  }
  if (replaceBy.because !== null && replaceBy.because !== "fade") {
    const when = replaceBy.kind === "already-due" ? "is reached" : `comes in ${monthOfDayWords(replaceBy.p50!)}`;
    return `${known}; ${LIMIT_WORDS[replaceBy.because]} ${when}${before(belowBy, replaceBy.p50!)}`;
  }
  if (belowBy.kind === "already-due") {
    const left = told.now === null ? null : leftWords(told.now.p50, told);
    const reckoned = told.readings.length === 0 ? `; going by its kind ${left} now` : `, now ${left}`;
    const estimate = left === null ? "" : reckoned;
    const sure = told.now !== null && told.now.p90 < told.threshold;
    return `${known}${estimate}: ${sure ? "" : "more likely than not "}below ${level} already`;
  }
  if (belowBy.p50 === null) return `${known}; not expected below ${level} within 30 years`;
  const from = belowBy.p10 === null ? "" : belowBy.p10 <= belowBy.p50 - 31 ? ` (80 % range ${range(belowBy)})` : "";
  const basis = told.readings.length === 0 ? ", so going by its kind" : "";
  const seen = told.siblings === null ? "" : `; ${siblingWords(told.siblings, asSet(told.threshold))}`;
  return `${known}${basis}; likely below ${level} by ${monthOfDayWords(belowBy.p50)}${from}${seen}`;
}

/** What a pack that is due has left. Below half its rating a pack's curve is a guess: nothing more is told. */
function leftWords(fraction: number, { primary, threshold }: Told): string {
  if (fraction < 0.5 && !primary) return "under 50 %";
  // rounded it must not seem to be at the threshold
  return Math.round(fraction * 100) / 100 < threshold ? `about ${percent(fraction)}` : `just under ${asSet(threshold)}`;
}

function knownSoFar(
  { readings, lastDoubted, lastBound, now, threshold, primary }: Told,
  kind: PackLife["belowBy"]["kind"],
): string {
  const last = readings.at(-1);
  if (last === undefined) return lastBound === null ? "Never measured" : boundWords(lastBound);
  const [left, test] = primary ? [" left", "reading"] : ["", "test"];
  const which = readings.length === 1 ? `its only ${test}` : `the last of ${readings.length} ${test}s`;
  // a reading below the threshold of a pack that is not due would leave its reader wondering
  const better = last.capacity < threshold && now !== null && kind !== "already-due";
  const doubt = lastDoubted ? "too far off to count for much" : better && `by the forecast ${percent(now.p50)} now`;
  return `${percent(last.capacity)}${left} at ${which} in ${monthOfDayWords(last.day)}${doubt ? `, ${doubt}: test again` : ""}`;
}

function boundWords({ day, threshold, below }: CapacityBound): string {
  return `${below ? "Below" : "At least"} ${asSet(threshold)} at its test in ${monthOfDayWords(day)}, no figure measured`;
}

function range({ p10, p90 }: PackLife["belowBy"]): string {
  return `${monthOfDayWords(p10!)} to ${p90 === null ? "never" : monthOfDayWords(p90)}`;
}

function before(belowBy: PackLife["belowBy"], limitDay: Day): string {
  if (belowBy.p50 === null || belowBy.kind === "no-forecast") return "";
  return belowBy.p50 > limitDay ? `, before fade (${monthOfDayWords(belowBy.p50)})` : "";
}
