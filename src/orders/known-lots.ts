import type { LotPlan, LotProblem } from "./lot-problem.ts";
import { planLots } from "./lot-sizing.ts";

/** Numbers that state a problem whose plan is kept, at the most, and numbers of all that are kept: 16 MB. */
const NUMBERS_AT_MOST = 2_000;
const NUMBERS_KEPT = 2_000_000;

interface Known {
  numbers: Float64Array;
  plan: LotPlan | null;
}

/** What is known, by a hash of the problem's numbers. */
const known = new Map<number, Known[]>();
let kept = 0;

/**
 * The plan that `planLots` gives. A search for orders to share states the same few problems again and again, beside
 * orders that come and go, and so does a planner who tries other choices; their plans are kept. Nobody may change one.
 */
export function knownLots(problem: LotProblem): LotPlan | null {
  const count = writeNumbers(problem);
  if (count > NUMBERS_AT_MOST) return planLots(problem);
  const hash = hashOf(count);
  const alike = known.get(hash);
  const found = alike?.find(({ numbers }) => isWritten(numbers, count));
  if (found) return found.plan;
  if (kept + count > NUMBERS_KEPT) {
    known.clear();
    kept = 0;
  }
  // the room is written to by nobody while lots are planned
  const one = { numbers: room.slice(0, count), plan: planLots(problem) };
  known.set(hash, [...(known.get(hash) ?? []), one]);
  kept += count;
  return one.plan;
}

const room = new Float64Array(NUMBERS_AT_MOST);
const words = new Uint32Array(room.buffer);

/** Writes all that a problem says into the room, as far as there is some, and tells how many numbers that takes. */
function writeNumbers({ cumulativeNeed, sources, surplusAtEnd }: LotProblem): number {
  let at = 0;
  // beyond its end the room takes nothing
  const write = (number: number) => {
    room[at++] = number;
  };
  write(surplusAtEnd ? 1 : 0);
  write(cumulativeNeed.length);
  for (const need of cumulativeNeed) write(need);
  for (const source of sources) {
    write(source.unitsPerBox);
    for (let period = 0; period < cumulativeNeed.length; period++) {
      const tiers = source.tiersAt(period);
      write(tiers.length);
      if (tiers.length > 0) write(source.lastServed(period));
      for (const { fromUnits, unitCost, lotCost, holdingCost } of tiers) {
        write(fromUnits);
        write(unitCost);
        write(lotCost);
        write(holdingCost);
      }
    }
  }
  return at;
}

/** FNV-1a over the 32-bit halves of the numbers written (Fowler, Noll and Vo). */
function hashOf(count: number): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < 2 * count; i++) hash = Math.imul(hash ^ words[i]!, 0x01000193);
  return hash;
}

function isWritten(numbers: Float64Array, count: number): boolean {
  if (numbers.length !== count) return false;
  for (let i = 0; i < count; i++) if (numbers[i] !== room[i]) return false;
  return true;
}
