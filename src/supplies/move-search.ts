import { bestAllocation } from "./best-allocation.ts";
import { exchangeSteps } from "./exchange-steps.ts";
import type { MovePlace, MovesFound } from "./move-place.ts";

/**
 * Exchanges of units between places, every place keeping its count, that raise the units expected to be used before
 * they lapse by more than their cost. Exact where the allocations are few; else step by step (see `exchangeSteps`),
 * whose gap to the best is measured in the tests.
 *
 * @param costPerUnitMoved  in units; an exchange moves two
 */
export function searchMoves(places: readonly MovePlace[], costPerUnitMoved: number): MovesFound {
  return bestAllocation(places, costPerUnitMoved) ?? exchangeSteps(places, costPerUnitMoved);
}
