import type { Day } from "../calendar/day.ts";
import type { PackRow } from "../fleet/rows.ts";
import { curveFromCoordinates, FADE_SCALE } from "./curve.ts";
import type { PackClock } from "./pack-clock.ts";
import { PRIORS } from "./priors.ts";

/**
 * The clock of a pack that may be of no known age. Where no date tells its age it was as old at its first reading as its
 * cycles made it by then, else as usual packs are once they have lost as much: taken for new, a pack that was first read
 * at half its rating would be taken for a good one badly read.
 *
 * @param first  its first reading, capacity as a fraction of rated; undefined where it has none
 */
export function agedClock(
  { made, inService }: PackRow,
  clock: PackClock,
  first: { day: Day; capacity: number } | undefined,
): PackClock {
  if (made !== null || inService !== null || first === undefined) return clock;
  const { years, useYears } = clock.momentAt(first.day);
  const counted = useYears > years;
  const older = Math.max(0, (counted ? useYears : yearsToLose(1 - first.capacity)) - years);
  return {
    ...clock,
    momentAt(day) {
      const moment = clock.momentAt(day);
      return { years: moment.years + older, useYears: moment.useYears + (counted ? 0 : older) };
    },
  };
}

const USUAL = curveFromCoordinates(new Float64Array(PRIORS.length));
const LONGEST_YEARS = 30;

/** Years in which a pack loses a fraction of its rating by the usual curve, before any reading speaks. */
function yearsToLose(loss: number): number {
  const { logMedianLife, slowPower, kneeLogit, kneePower } = USUAL;
  const knee = 1 / (1 + Math.exp(-kneeLogit));
  const lost = (years: number) => {
    const log = Math.log(years) - logMedianLife;
    return FADE_SCALE * ((1 - knee) * Math.exp(slowPower * log) + knee * Math.exp(kneePower * log));
  };
  let [low, high] = [0, LONGEST_YEARS];
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (lost(middle) < loss) low = middle;
    else high = middle;
  }
  return low;
}
