import { GRID_SIZE } from "./time-grid.ts";

/**
 * Chances by curve on the time grid, non-decreasing in time. Most of a grid lies before a pack could be due or after it
 * is, so only the times between are kept.
 */
export interface GridChances {
  curves: number;
  /**
   * SPAN_PLACES a curve: the last grid time at which there is no chance yet (0 where there is one by then), the time
   * from which the chance stays as it is, and where in `values` the first of them stands.
   */
  spans: Int32Array;
  /** The chances at all times from the one to the other, curve after curve. */
  values: Float32Array;
}

export const SPAN_PLACES = 3;

/** Room for the chances of many curves; grows where it does not do. */
let room = new Float32Array(32 * GRID_SIZE);

/**
 * Keeps chances on the grid where they change.
 *
 * @param chancesOf  fills `into` with a curve's chances at all GRID_SIZE times
 */
export function gridChances(curves: number, chancesOf: (curve: number, into: Float32Array) => void): GridChances {
  const spans = new Int32Array(curves * SPAN_PLACES);
  const all = new Float32Array(GRID_SIZE);
  let used = 0;
  for (let curve = 0; curve < curves; curve++) {
    chancesOf(curve, all);
    let begins = 0;
    let settles = GRID_SIZE - 1;
    while (begins < settles && all[begins + 1] === 0 && all[begins] === 0) begins++;
    while (settles > begins && all[settles - 1] === all[settles]) settles--;
    if (used + GRID_SIZE > room.length) {
      const more = new Float32Array(2 * room.length);
      more.set(room);
      room = more;
    }
    spans[curve * SPAN_PLACES] = begins;
    spans[curve * SPAN_PLACES + 1] = settles;
    spans[curve * SPAN_PLACES + 2] = used;
    for (let k = begins; k <= settles; k++) room[used++] = all[k]!;
  }
  return { curves, spans, values: room.slice(0, used) };
}

/** A curve's chance at a fractional index of the grid, by straight lines. */
export function chanceAt({ spans, values }: GridChances, curve: number, index: number): number {
  const begins = spans[curve * SPAN_PLACES]!;
  const settles = spans[curve * SPAN_PLACES + 1]!;
  const from = spans[curve * SPAN_PLACES + 2]! - begins;
  const below = Math.floor(index);
  if (below >= settles) return values[from + settles]!;
  if (below < begins) return values[from + begins]!;
  const share = index - below;
  return values[from + below]! * (1 - share) + values[from + below + 1]! * share;
}
