/** One capacity reading of a pack, to be drawn as a dot. */
export interface Dot {
  day: number;
  /** Percent of rated capacity. */
  percent: number;
}

/** The readings of every pack that the forecast rests on, by `nameKey` of its serial. */
export type PackReadings = ReadonlyMap<string, Dot[]>;

/** Key under which names are the same, as in the engine: trimmed, inner blanks folded, without case. */
export function nameKey(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}

/** The readings of one pack by its serial. */
export function readingsOf(serial: string, readings: PackReadings): Dot[] {
  return readings.get(nameKey(serial)) ?? [];
}
