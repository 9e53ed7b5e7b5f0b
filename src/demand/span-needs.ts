/** A random part of an item's needs that is independent of the other parts. Months are indices from as-of's month. */
export interface SpanNeeds {
  /** Distribution of the needs in months after+1 .. through, draws mixed. */
  countsIn(after: number, through: number): Float64Array;
  /**
   * Smallest count met with chance >= level, where that is quicker than through `countsIn`; else null.
   */
  quantileIn(after: number, through: number, level: number): number | null;
  /** Adds one possible future, given the draw, to `into` (a count a month). */
  addPath(draw: number, random: () => number, into: Int32Array): void;
}
