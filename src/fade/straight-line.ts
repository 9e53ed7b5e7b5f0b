import { linearRegression } from "simple-statistics";

/** A straight line y = start + slope x. */
export interface StraightLine {
  start: number;
  slope: number;
}

/**
 * The least-squares line through points: what a spreadsheet's trend gives for one pack's tests.
 *
 * @param points  pairs of x and y; at least two different x, else null
 */
export function straightLine(points: readonly (readonly [number, number])[]): StraightLine | null {
  const first = points[0];
  if (first === undefined || points.every(([x]) => x === first[0])) return null;
  // centred: far from the origin the sums of squares would cancel
  const centre = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const { m, b } = linearRegression(points.map(([x, y]) => [x - centre, y]));
  return { start: b - m * centre, slope: m };
}

/**
 * Where a line meets a level, or null where it runs away from it or along it.
 *
 * @param towards  "falling" where the quantity falls to the level, "rising" where it grows to it
 */
export function crossingOf(line: StraightLine, level: number, towards: "falling" | "rising"): number | null {
  const rightWay = towards === "falling" ? line.slope < 0 : line.slope > 0;
  return rightWay ? (level - line.start) / line.slope : null;
}
