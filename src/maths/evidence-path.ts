import { effectiveShare, type Point, weightsFrom } from "./point-cloud.ts";

/** A likelihood that is a product over parts, which may be heard one after the other. */
export interface PartedLikelihood {
  /** How many there are. */
  parts: number;
  /** Log likelihoods of parts `from` up to but not including `to` at a place; finite, however unlikely. */
  logsOf: (x: Float64Array, from: number, to: number) => ArrayLike<number>;
}

/** Log likelihood of the first `heard` parts, the last of them by its fraction. */
export function logLikelihoodOf({ logsOf }: PartedLikelihood, x: Float64Array, heard: number): number {
  const whole = Math.floor(heard);
  const logs = logsOf(x, 0, Math.ceil(heard));
  let sum = 0;
  for (let i = 0; i < whole; i++) sum += logs[i]!;
  return heard > whole ? sum + (heard - whole) * logs[whole]! : sum;
}

/** Share of the points that must still count when more is heard. */
const ENOUGH_POINTS = 0.5;
/** Parts heard at once: no more than so many, and as many again as before. */
const NEW_PARTS = 4;
/** Halvings that tell how much of a part may be heard: more than can show. */
const HALVINGS = 40;
/** Progress made even where a part is a cliff. */
const LEAST_PROGRESS = 1e-6;

/**
 * How much more of the likelihood the points can hear while enough of them still count.
 *
 * @param heard  parts heard by now; the fraction of the next counts already
 * @returns parts to hear next, and what each point gains in log likelihood by then
 */
export function hearMore(
  cloud: readonly Point[],
  heard: number,
  likelihood: PartedLikelihood,
): { heard: number; gains: Float64Array } {
  const from = Math.floor(heard);
  const to = Math.min(likelihood.parts, 2 * from + NEW_PARTS);
  const logs = cloud.map(({ x }) => likelihood.logsOf(x, from, to));
  let gains = new Float64Array(cloud.length);
  for (let part = from; part < to; part++) {
    const already = Math.max(0, heard - part);
    const before = gains;
    const upTo = (share: number) => before.map((gain, i) => gain + (share - already) * logs[i]![part - from]!);
    gains = upTo(1);
    if (enoughCount(gains)) continue;
    // what was heard in full will do, but for a first part that says much
    if (part > from) return { heard: part, gains: before };
    const share = hardestShare(already, (tried) => enoughCount(upTo(tried)));
    return { heard: part + share, gains: upTo(share) };
  }
  return { heard: to, gains };
}

const enoughCount = (gains: Float64Array) => effectiveShare(weightsFrom(gains)) >= ENOUGH_POINTS;

/** The largest share of a part, up to 1, that will do. */
function hardestShare(already: number, willDo: (share: number) => boolean): number {
  let low = already;
  let high = 1;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (willDo(middle)) low = middle;
    else high = middle;
  }
  return Math.min(1, Math.max(low, already + LEAST_PROGRESS));
}
