import type { FadingItem } from "../fade/fade-items.ts";
import { heededReadings } from "../fade/heeded-readings.ts";
import { listed } from "../fleet/listed.ts";
import { median } from "../maths/quantiles.ts";

/** Mean start capacity, fraction of rated, under which a rating or a test load is likelier wrong than every pack. */
const START_TOO_LOW = 0.9;

/** What a test may be off by, fraction of rated. */
const SCATTER = 0.02;

/** A pack hardly loses more than this, a fraction of rated, in so many days: common practice, no source. */
const MOST_LOST = 0.05;
const HALF_A_YEAR = 183;

/**
 * Cautions that an item's fit calls for.
 *
 * @param threshold  fraction of rated at which packs have been replaced so far
 */
export function fadeCautions(items: readonly FadingItem[], threshold: number): string[] {
  return items.flatMap(({ item, packs, completedLives, borrowsFrom, group }) => {
    const cautions: string[] = [];
    if (borrowsFrom.length > 0) {
      cautions.push(`There are few tests of ${item}: its curve leans on those of ${listed(borrowsFrom)}.`);
    }
    // a pack read well below the threshold has been seen to its end, whether or not it was retired for it
    const readBelow = packs.some((pack) => (heededReadings(pack).at(-1)?.capacity ?? 1) < threshold - SCATTER);
    if (group.readings > 0 && completedLives === 0 && !readBelow) {
      cautions.push(
        `No ${item} has been seen to its end of life: how fast these packs fall at the end is not in your readings, so the forecast is wide.`,
      );
    }
    if (group.readings === 0 && packs.some(({ clock }) => clock.start !== null)) {
      const judged = packs.some(({ readings: { bounds } }) => bounds.length > 0);
      const untold = judged ? `No test of ${item} says how much it held` : `No ${item} has been tested`;
      cautions.push(`${untold}: its forecast rests ${judged ? "mostly" : "only"} on what is usual for such packs.`);
    }
    const lastOfFaded = packs.flatMap(({ pack, ...rest }) => {
      const last = heededReadings(rest).at(-1);
      const isNear = last !== undefined && pack.retiredBecause === "faded" && pack.retired! - last.day <= HALF_A_YEAR;
      return isNear ? [last.capacity] : [];
    });
    if (lastOfFaded.length > 1 && median(lastOfFaded) > threshold + MOST_LOST)
      cautions.push(
        `The ${item} packs retired as faded held some ${Math.round(median(lastOfFaded) * 100)} % at their last tests, far above the policy sheet's end of life, and are taken to fall steeply: give the sheet the one that held then, and try another by --policy or on the page.`,
      );
    const start = group.parameters.startCapacity ?? 1;
    if (group.readings > 0 && start < START_TOO_LOW) {
      cautions.push(
        `The ${item} packs seem to start at ${Math.round(start * 100)} % of their rating: check the rated capacity and the test load before trusting their forecast.`,
      );
    }
    return cautions;
  });
}
