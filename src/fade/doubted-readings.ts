import type { Day } from "../calendar/day.ts";
import type { Source } from "../fleet/rows.ts";
import { expectedCapacities } from "./expected-capacity.ts";
import type { FadingItem } from "./fade-items.ts";
import { DOUBTED_BELOW } from "./heeded-readings.ts";

/** A reading that the forecast hardly heeds, since it lies too far from what the pack's other readings lead to. */
export interface DoubtedReading {
  serial: string;
  day: Day;
  /** As read and as the pack's curve has it, fractions of rated. */
  capacity: number;
  expected: number;
  /** What the reading still counts for, 0 to 1. */
  trust: number;
  source: Source;
}

/** Curves that say what was to be expected: every sixteenth draw is enough for a whole percent. */
const EVERY = 16;

/** The doubted readings of an item's packs, in the order of the packs and of their days. */
export function doubtedReadings({ packs, fit }: FadingItem): DoubtedReading[] {
  const curves = fit.tables.filter((_, draw) => draw % EVERY === 0);
  return packs.flatMap(({ pack, evidence, readings }) => {
    if (evidence.trust.every((trust) => trust >= DOUBTED_BELOW)) return [];
    const expected = expectedCapacities(evidence, curves);
    return readings.readings.flatMap(({ day, capacity, source }, j) => {
      const trust = evidence.trust[j]!;
      return trust < DOUBTED_BELOW
        ? [{ serial: pack.serial, day, capacity, expected: expected[j]!, trust, source }]
        : [];
    });
  });
}
