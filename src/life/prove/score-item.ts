import { mean } from "simple-statistics";
import type { Day } from "../../calendar/day.ts";
import type { DateBand } from "../../fade/types.ts";
import { median } from "../../maths/quantiles.ts";

/** One hidden life that came to its end: when it did, and what was said of it at the cut-off. */
export interface ProvedLife {
  item: string;
  serial: string;
  cut: Day;
  start: Day;
  after: Day;
  by: Day;
  forecast: DateBand;
  /** What a straight line through the pack's own tests said; null where it never comes down. */
  line: Day | null;
  /** What the age rule said. */
  age: Day;
}

/** One reading that was hidden, against the forecast capacity of that day. */
export interface ProvedReading {
  item: string;
  error: number;
  inside: boolean;
}

/** Ends that a forecast expected between cut-off and now, against those that came. */
export interface ProvedCount {
  item: string;
  expected: number;
  came: number;
}

/** Scores of one item, or of all. Errors are shares of a pack's life; null where nothing was there to score. */
export interface ProveScore {
  item: string;
  lives: number;
  error: { mean: number; median: number } | null;
  line: { mean: number; median: number } | null;
  age: { mean: number; median: number } | null;
  /** Share of ends inside the 80 % interval of their forecast. */
  inside: number | null;
  /** Mean width of that interval. */
  width: number | null;
  readings: number;
  /** Mean distance of a hidden reading from its forecast, fraction of rated. */
  readingError: number | null;
  /** Share of hidden readings inside their 80 % interval, scatter of the test included. */
  readingInside: number | null;
  expectedEnds: number;
  ends: number;
}

/** An endless forecast counts as three lives of error: one must not hide all others. */
const MOST_LIVES_OFF = 3;

/** Scores of what was forecast for hidden history. */
export function scoreItem(
  item: string,
  lives: readonly ProvedLife[],
  readings: readonly ProvedReading[],
  counts: readonly ProvedCount[],
): ProveScore {
  const errors = (said: (life: ProvedLife) => Day | null) => {
    if (lives.length === 0) return null;
    const shares = lives.map((life) => Math.abs(shareOff(said(life), life)));
    return { mean: mean(shares), median: median(shares) };
  };
  const share = <T>(list: readonly T[], test: (one: T) => boolean) =>
    list.length === 0 ? null : list.filter(test).length / list.length;
  return {
    item,
    lives: lives.length,
    error: errors((life) => life.forecast.p50),
    line: errors((life) => life.line),
    age: errors((life) => life.age),
    inside: share(
      lives,
      ({ forecast, after, by }) => (forecast.p10 ?? Infinity) <= by && (forecast.p90 ?? Infinity) >= after,
    ),
    width: lives.length === 0 ? null : mean(lives.map(widthOf)),
    readings: readings.length,
    readingError: readings.length === 0 ? null : mean(readings.map(({ error }) => Math.abs(error))),
    readingInside: share(readings, ({ inside }) => inside),
    expectedEnds: counts.reduce((sum, { expected }) => sum + expected, 0),
    ends: counts.reduce((sum, { came }) => sum + came, 0),
  };
}

/** The day on which a life ended, as well as its tests tell. */
const endOf = ({ after, by }: ProvedLife) => (after + by) / 2;

/** How far off a date was, as a share of the life, at most MOST_LIVES_OFF. */
function shareOff(said: Day | null, life: ProvedLife): number {
  const length = endOf(life) - life.start;
  const latest = endOf(life) + MOST_LIVES_OFF * length;
  return (Math.min(latest, Math.max(life.start, said ?? Infinity)) - endOf(life)) / length;
}

function widthOf(life: ProvedLife): number {
  return shareOff(life.forecast.p90, life) - shareOff(life.forecast.p10, life);
}
