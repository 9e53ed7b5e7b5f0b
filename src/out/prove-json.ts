import { isoFromDay } from "../calendar/day.ts";
import type { Proof } from "../life/prove/prove.ts";
import type { ProveScore } from "../life/prove/score-item.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { ENGINE } from "./engine.ts";
import { CHANCE_DIGITS, roundTo, roundUnits } from "./rounding.ts";

/** The proof as JSON, format `wanecast.prove/1`: errors and widths are shares of a pack's life. */
export function proveJson(proof: Proof): object {
  return {
    format: "wanecast.prove/1",
    engine: ENGINE,
    asOf: isoFromDay(proof.asOf),
    cuts: proof.cuts.map(isoFromDay),
    scores: proof.scores.map(roundedScore),
    ownSpread: proof.ownSpread.map((one) => ({ ...one, spread: roundTo(one.spread, CHANCE_DIGITS) })),
    cautions: STANDING_CAUTIONS,
  };
}

function roundedScore(score: ProveScore): ProveScore {
  const share = (value: number | null) => (value === null ? null : roundTo(value, CHANCE_DIGITS));
  const both = (pair: ProveScore["error"]) =>
    pair === null ? null : { mean: roundTo(pair.mean, CHANCE_DIGITS), median: roundTo(pair.median, CHANCE_DIGITS) };
  return {
    ...score,
    error: both(score.error),
    line: both(score.line),
    age: both(score.age),
    inside: share(score.inside),
    width: share(score.width),
    readingError: share(score.readingError),
    readingInside: share(score.readingInside),
    expectedEnds: roundUnits(score.expectedEnds),
  };
}
