import type { Day } from "../calendar/day.ts";

/** The planner's choices, with their defaults filled in. Field names are the policy sheet's keys in camel case. */
export interface Policy {
  asOf: Day;
  horizonMonths: number;
  fiscalYearStarts: number;
  endOfLifePercent: number;
  primaryEndPercent: number;
  activationEnergyEv: number;
  packMaxAgeMonths: number | null;
  packMaxCycles: number | null;
  serviceLevel: number;
  sparesPercent: number;
  /** Whether units that devices in service lack are needs. */
  buyLacking: "yes" | "no";
  swapBeforeExpiryDays: number;
  minLifeDays: number;
  swapsPerMonth: number | null;
  orderBeforeNeedDays: number;
  holdingRatePerYear: number;
  priceRisePerYear: number;
  useLogFrom: Day | null;
  /** Decimal text in major units of `currency`. */
  budgetPerFiscalYear: string | null;
  currency: string | null;
  dateOrder: "dmy" | "mdy" | "ymd" | null;
}

/** Activation energy of fade by age, eV: the middle of the 0.3 to 0.6 that most cells show (from memory). */
export const FADE_ACTIVATION_EV = 0.45;

/** A policy of defaults only. */
export function defaultPolicy(asOf: Day): Policy {
  return {
    asOf,
    horizonMonths: 36,
    fiscalYearStarts: 1,
    endOfLifePercent: 80,
    primaryEndPercent: 10,
    activationEnergyEv: FADE_ACTIVATION_EV,
    packMaxAgeMonths: null,
    packMaxCycles: null,
    serviceLevel: 0.95,
    sparesPercent: 0,
    buyLacking: "no",
    swapBeforeExpiryDays: 14,
    minLifeDays: 14,
    swapsPerMonth: null,
    orderBeforeNeedDays: 14,
    holdingRatePerYear: 0.1,
    priceRisePerYear: 0,
    useLogFrom: null,
    budgetPerFiscalYear: null,
    currency: null,
    dateOrder: null,
  };
}
