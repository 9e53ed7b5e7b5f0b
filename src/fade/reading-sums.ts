import type { PackEvidence } from "./evidence.ts";
import { powersRoom } from "./node-tables.ts";
import { KNEE, powersOf, RISE, SLOW, type WearPowers } from "./wear-powers.ts";

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
  /** One a level of shape. */
  slow: SlowSums[];
}

/** Room for sums, to be used again and again. */
export function emptySums(levels: number): ReadingSums {
  return {
    shared: { n: 0, w: 0, r: 0, y: 0, k: 0, rr: 0, ry: 0, rk: 0, yy: 0, yk: 0, kk: 0 },
    slow: Array.from({ length: levels }, () => ({ p: 0, rp: 0, yp: 0, pp: 0, pk: 0 })),
  };
}

const powersHere = powersRoom();

/** Sums of a pack's readings for each level of shape. */
export function sumReadings(evidence: PackEvidence, powers: WearPowers, into: ReadingSums): void {
  const { years, useYears, capacity, trust } = evidence;
  const { curve } = powers;
  const { shared, slow } = into;
  const n = years.length;
  shared.n = n;
  shared.w = shared.r = shared.y = shared.k = 0;
  shared.rr = shared.ry = shared.rk = shared.yy = shared.yk = shared.kk = 0;
  for (let level = 0; level < slow.length; level++) {
    const sums = slow[level]!;
    sums.p = sums.rp = sums.yp = sums.pp = sums.pk = 0;
  }
  for (let j = 0; j < n; j++) {
    const w = trust[j]!;
    powersOf(powers, (1 - curve.useShare) * years[j]! + curve.useShare * useYears[j]!, powersHere);
    const r = powersHere[RISE]!;
    const k = powersHere[KNEE]!;
    // centred: the sums of squares would cancel otherwise
    const y = capacity[j]! - curve.startCapacity - curve.earlyRise * r;
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
      const p = powersHere[SLOW + level]!;
      const wp = w * p;
      sums.p += wp;
      sums.rp += r * wp;
      sums.yp += y * wp;
      sums.pp += p * wp;
      sums.pk += k * wp;
    }
  }
}
