import { type FleetCurve, riseShare } from "./curve.ts";
import type { PackEvidence } from "./evidence.ts";

/**
 * Weighted sums over a pack's readings of the products of 1, r (share of the early rise), y (capacity less what is
 * expected of a new pack) and k (wear to the knee's power).
 */
interface SharedSums {
  n: number;
  w: number;
  r: number;
  y: number;
  k: number;
  rr: number;
  ry: number;
  rk: number;
  yy: number;
  yk: number;
  kk: number;
}

/** The same with p (wear to one power of the slow loss). */
interface SlowSums {
  p: number;
  rp: number;
  yp: number;
  pp: number;
  pk: number;
}

/** All that the readings of a pack say, given a curve. */
export interface ReadingSums {
  shared: SharedSums;
  /** One a power of the slow loss. */
  slow: SlowSums[];
}

/** Sums of a pack's readings for each power of the slow loss. */
export function sumReadings(evidence: PackEvidence, curve: FleetCurve, slowPowers: readonly number[]): ReadingSums {
  const { years, useYears, capacity, trust } = evidence;
  const n = years.length;
  const shared: SharedSums = { n, w: 0, r: 0, y: 0, k: 0, rr: 0, ry: 0, rk: 0, yy: 0, yk: 0, kk: 0 };
  const slow: SlowSums[] = slowPowers.map(() => ({ p: 0, rp: 0, yp: 0, pp: 0, pk: 0 }));
  for (let j = 0; j < n; j++) {
    const w = trust[j]!;
    const s = (1 - curve.useShare) * years[j]! + curve.useShare * useYears[j]!;
    const logWear = Math.log(s);
    const r = riseShare(s, curve.earlyYears);
    // centred: the sums of squares would cancel otherwise
    const y = capacity[j]! - curve.startCapacity - curve.earlyRise * r;
    const k = Math.exp(curve.kneePower * logWear);
    shared.w += w;
    shared.r += w * r;
    shared.y += w * y;
    shared.k += w * k;
    shared.rr += w * r * r;
    shared.ry += w * r * y;
    shared.rk += w * r * k;
    shared.yy += w * y * y;
    shared.yk += w * y * k;
    shared.kk += w * k * k;
    for (let level = 0; level < slow.length; level++) {
      const sums = slow[level]!;
      const p = Math.exp(slowPowers[level]! * logWear);
      sums.p += w * p;
      sums.rp += w * r * p;
      sums.yp += w * y * p;
      sums.pp += w * p * p;
      sums.pk += w * p * k;
    }
  }
  return { shared, slow };
}
