import type { Plan } from "../src/index.ts";
import { monthAfter, monthEnd } from "./months.ts";

/** What a pack is likely to hold on a day, and the band around it, in percent of rated. */
export interface PathPoint {
  day: number;
  p10: number;
  p50: number;
  p90: number;
}

/** The path of a pack from as-of on; it starts at today's capacity where that is known. */
export function packPath({ path, capacityNow: now }: Plan["packs"][number], asOf: number): PathPoint[] {
  if (path.p50.length === 0) return [];
  const start = now ? [{ day: asOf, p10: now.p10 * 100, p50: now.p50 * 100, p90: now.p90 * 100 }] : [];
  const ends = path.p50.map((p50, index) => ({
    day: monthEnd(monthAfter(path.from, index)),
    p10: (path.p10[index] ?? p50) * 100,
    p50: p50 * 100,
    p90: (path.p90[index] ?? p50) * 100,
  }));
  return [...start, ...ends.filter((point) => point.day > asOf)];
}
