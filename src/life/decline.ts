import type { Day } from "../calendar/day.ts";
import { capacityBands } from "../fade/capacity-path.ts";
import type { FadingItem } from "../fade/fade-items.ts";
import type { GridChances } from "../fade/grid-chances.ts";
import type { FadingPack } from "../fade/items-with-evidence.ts";
import { chancesBelow } from "../fade/pack-outlook.ts";
import { type KeptPosteriors, posteriorsByCurve } from "../fade/posteriors-by-curve.ts";
import type { CapacityBand } from "../fade/types.ts";
import { wearAhead } from "../fade/wear-ahead.ts";
import type { Policy } from "../fleet/policy.ts";
import { keptFor } from "./kept-for.ts";

/** How one pack runs down, whatever the model behind it: fade of a rechargeable one, discharge of another. */
export interface Decline {
  /**
   * Chances of being below the threshold by curve, with the pack's own model error. Draw d stands on curve d % curves.
   */
  chances: GridChances;
  /** The model error that all packs of the item share: log stretch of time ahead, by draw. */
  common: Float64Array;
  /** What is left on given days, fractions of rated. */
  bands(days: readonly Day[]): CapacityBand[];
}

/** The capacity ahead, which hangs on no threshold. */
const bandsOf = keptFor<FadingPack, CapacityBand[]>();

/**
 * The fade of a rechargeable pack; null where its start is unknown.
 *
 * @param kept  where posteriors are kept for another end of life
 */
export function fadeDecline(
  fading: FadingPack,
  { fit }: FadingItem,
  { asOf, endOfLifePercent }: Policy,
  kept: KeptPosteriors | null,
): Decline | null {
  const { evidence, clock } = fading;
  if (clock.start === null) return null;
  const ahead = wearAhead(clock, asOf);
  const posteriors = () => kept?.of(evidence, fit.tables) ?? posteriorsByCurve(evidence, fit.tables);
  return {
    chances: chancesBelow(evidence, ahead, fit, endOfLifePercent / 100, fit.stretch.own, posteriors()),
    common: fit.stretch.common,
    bands: (days) =>
      bandsOf(fading, [fit, asOf, days.join(" ")], () =>
        capacityBands(
          evidence,
          ahead,
          fit,
          days.map((day) => day - asOf),
          posteriors(),
        ),
      ),
  };
}
