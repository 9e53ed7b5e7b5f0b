import type { GammaRate } from "../maths/gamma-poisson.ts";
import { logGamma } from "../maths/log-gamma.ts";
import type { Random } from "../maths/random.ts";

/**
 * Numbers of events in a time for each of the futures given, the rate being gamma distributed: quantiles of the negative
 * binomial at evenly spaced levels, dealt to the futures at random. Their spread is thus nearly exact in every place,
 * and only how places meet in one future is left to chance.
 *
 * @param time  in the rate's unit
 * @param among  the futures
 * @param deal  told the future and its number of events, for futures with any
 */
export function dealEvents(
  rate: GammaRate,
  time: number,
  among: Uint32Array,
  random: Random,
  deal: (future: number, events: number) => void,
): void {
  if (time <= 0) return;
  const offset = random.uniform();
  const share = time / (rate.exposure + time);
  let events = fewestEvents(rate, time);
  let chance = Math.exp(logChance(events, rate, time));
  let below = chance;
  const order = among.slice();
  const futures = order.length;
  let left = futures;
  for (let stratum = 0; stratum < futures; stratum++) {
    const level = (stratum + offset) / futures;
    while (level > below && chance > 0) {
      chance *= (share * (rate.shape + events)) / (events + 1);
      below += chance;
      events++;
    }
    if (events === 0) continue;
    const pick = Math.floor(random.uniform() * left);
    const future = order[pick]!;
    order[pick] = order[--left]!;
    deal(future, events);
  }
}

/** The chance of fewer events than so many standard deviations below the mean is nothing. */
const DEVIATIONS_BELOW = 9;

/** A number of events with next to no chance of fewer: a busy place's chance of none at all is too small for a number. */
function fewestEvents({ shape, exposure }: GammaRate, time: number): number {
  const mean = (shape / exposure) * time;
  const deviation = Math.sqrt(mean + (mean * time) / exposure);
  return Math.max(0, Math.floor(mean - DEVIATIONS_BELOW * deviation));
}

/** Logarithm of the negative binomial chance of so many events. */
function logChance(events: number, { shape, exposure }: GammaRate, time: number): number {
  const none = -shape * Math.log1p(time / exposure);
  if (events === 0) return none;
  const ways = logGamma(shape + events) - logGamma(shape) - logGamma(events + 1);
  return none + ways + events * Math.log(time / (exposure + time));
}
