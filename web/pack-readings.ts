import { nameKey } from "./name-key.ts";

/** One capacity reading of a pack, to be drawn as a dot. */
export interface Dot {
  day: number;
  /** Percent of rated capacity. */
  percent: number;
}

/** The readings of every pack that the forecast rests on, by `nameKey` of its serial. */
export type PackReadings = ReadonlyMap<string, Dot[]>;

/** The readings of one pack by its serial. */
export function readingsOf(serial: string, readings: PackReadings): Dot[] {
  return readings.get(nameKey(serial)) ?? [];
}
