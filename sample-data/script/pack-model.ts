import { normal } from "./random.ts";

const DAYS_PER_YEAR = 365.25;
const GAS_CONSTANT = 8.314;
/** Activation energy of storage loss in J/mol; common practice, no source. */
const ACTIVATION = 50_000;

/** How a kind of pack wears: shares of rated capacity. */
export interface Wear {
  perSqrtYear: number;
  perCycle: number;
  kneeYears: number;
  /** Spread of the packs' own pace, on the logarithm. */
  spread: number;
}

/** A pack that the story ages. */
export interface AgeingPack {
  made: number;
  inService: number;
  cyclesPerYear: number;
  temperatureC: number;
  wear: Wear;
  /** Its own pace; 1 is the kind's. */
  pace: number;
  /** Its capacity when new, as a share of rated. */
  fresh: number;
}

/** Draws what is a pack's own. */
export function ageingPack(pack: Omit<AgeingPack, "pace" | "fresh">): AgeingPack {
  return { ...pack, pace: Math.exp(pack.wear.spread * normal()), fresh: 1.005 + 0.012 * normal() };
}

/** Cycles that a pack has done by a day. */
export function cyclesBy({ inService, cyclesPerYear }: AgeingPack, on: number): number {
  return Math.round((Math.max(0, on - inService) / DAYS_PER_YEAR) * cyclesPerYear);
}

/**
 * True capacity of a pack on a day, as a share of rated: the square root of time and its cycles at first,
 * and a knee towards the end; all of it faster where it is hot.
 */
export function capacityOn(pack: AgeingPack, on: number): number {
  const { wear, pace, fresh } = pack;
  const hot = Math.exp((ACTIVATION / GAS_CONSTANT) * (1 / 298.15 - 1 / (273.15 + pack.temperatureC)));
  const years = (Math.max(0, on - pack.made) / DAYS_PER_YEAR) * hot;
  const slow = wear.perSqrtYear * Math.sqrt(years) + wear.perCycle * cyclesBy(pack, on);
  return fresh - pace * slow - 0.12 * ((pace * years) / wear.kneeYears) ** 6;
}
