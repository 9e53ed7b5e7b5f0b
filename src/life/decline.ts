import type { Day } from "../calendar/day.ts";
import { capacityBands } from "../fade/capacity-path.ts";
import type { FadingItem, FadingPack } from "../fade/fade-items.ts";
import { chancesBelow } from "../fade/pack-outlook.ts";
import { GRID_DAYS } from "../fade/time-grid.ts";
import type { TimeStretch } from "../fade/time-stretch.ts";
import type { CapacityBand } from "../fade/types.ts";
import type { Policy } from "../fleet/policy.ts";

/** How one pack runs down, whatever the model behind it: fade of a rechargeable one, discharge of another. */
export interface Decline {
  /** Chances of being below the threshold by draw on the time grid, before model error. */
  chances: Float32Array;
  stretch: TimeStretch;
  /** What is left on given days, fractions of rated. */
  bands(days: readonly Day[]): CapacityBand[];
}

/** The fade of a rechargeable pack; null where its start is unknown. */
export function fadeDecline(
  fading: FadingPack,
  { fit }: FadingItem,
  { asOf, endOfLifePercent }: Policy,
): Decline | null {
  const { evidence, clock } = fading;
  if (clock.start === null) return null;
  const moments = Array.from(GRID_DAYS, (days) => clock.momentAt(asOf + days));
  return {
    chances: chancesBelow(evidence, moments, fit, endOfLifePercent / 100),
    stretch: fit.stretch,
    bands: (days) => capacityBands(evidence, clock, fit, fit.stretch, asOf, days),
  };
}
