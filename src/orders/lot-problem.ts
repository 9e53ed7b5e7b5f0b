/** From a lot size of `fromUnits` on (up to the next tier), every unit costs `unitCost` and the lot `lotCost`. */
export interface LotTier {
  fromUnits: number;
  unitCost: number;
  lotCost: number;
  /** Cost of holding one unit bought at this tier for one period. */
  holdingCost: number;
}

/** One way to buy: lots are whole boxes; the first tier's `fromUnits` is the minimum order. */
export interface LotSource {
  unitsPerBox: number;
  /** Tiers for a lot that arrives for a period, by size; empty = no lot can arrive for it. */
  tiersAt(period: number): readonly LotTier[];
  /** The last period that a lot arriving for a period can serve (its life), >= the period. */
  lastServed(period: number): number;
}

/** Needs of one item, cumulative by period, non-decreasing whole units, and the ways to meet them. */
export interface LotProblem {
  cumulativeNeed: readonly number[];
  sources: readonly LotSource[];
  /** Whether units may be left at the end of the last period (a box or a minimum order can force them). */
  surplusAtEnd: boolean;
}

/** One lot of a plan. */
export interface Lot {
  period: number;
  /** Index in `sources`. */
  source: number;
  units: number;
  /** Cumulative needs that all lots before this one cover, and those covered with it. */
  coveredBefore: number;
  coveredAfter: number;
  /** Units that no need can use before they lapse. */
  lapsing: number;
}

export interface LotPlan {
  cost: number;
  lots: Lot[];
}
