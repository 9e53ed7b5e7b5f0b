/**
 * A moment of a pack's life on both clocks: years since made (weighted by temperature), and its cycles as years
 * of typical use. Wear is a mix of the two whose share is learned.
 */
export interface Moment {
  years: number;
  useYears: number;
}

/** A one-sided reading: the capacity then would have been read below (or not below) `threshold`. */
export interface Bound extends Moment {
  /** Fraction of rated capacity. */
  threshold: number;
  below: boolean;
}

/** What the readings say of one pack, ready for the likelihood. */
export interface PackEvidence {
  years: Float64Array;
  useYears: Float64Array;
  /** Capacity read, fraction of rated. */
  capacity: Float64Array;
  /** Trust in each reading: 1 at first, lower for outlying ones. */
  trust: Float64Array;
  bounds: readonly Bound[];
}

/** Evidence of readings at given moments. */
export function packEvidence(
  readings: readonly (Moment & { capacity: number })[],
  bounds: readonly Bound[],
): PackEvidence {
  return {
    years: Float64Array.from(readings, (reading) => reading.years),
    useYears: Float64Array.from(readings, (reading) => reading.useYears),
    capacity: Float64Array.from(readings, (reading) => reading.capacity),
    trust: new Float64Array(readings.length).fill(1),
    bounds,
  };
}

/** Whether anything was read of a pack. */
export const speaks = ({ years, bounds }: PackEvidence) => years.length + bounds.length > 0;

/** Wear-years at a moment. */
export function wearAt({ years, useYears }: Moment, useShare: number): number {
  return (1 - useShare) * years + useShare * useYears;
}
