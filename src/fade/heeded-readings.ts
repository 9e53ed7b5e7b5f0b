import type { CapacityReading } from "./capacity-readings.ts";
import type { FadingPack } from "./items-with-evidence.ts";

/** Trust below which a reading is likelier spoilt than good. */
export const DOUBTED_BELOW = 0.5;

/** A pack's readings without those that its fit doubts: what to build a fact on, such as the day of its end. */
export function heededReadings({ readings, evidence }: Pick<FadingPack, "readings" | "evidence">): CapacityReading[] {
  // a pack whose age is unknown has no evidence to doubt
  return readings.readings.filter((_, j) => (evidence.trust[j] ?? 1) >= DOUBTED_BELOW);
}
