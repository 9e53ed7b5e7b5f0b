import type { LifeForecast } from "../life/types.ts";
import type { Plan } from "./plan-schema.ts";
import { CHANCE_DIGITS, roundChance, roundParameter, roundTo, roundUnits } from "./rounding.ts";

/** The items' records of sudden failures as plan rows. */
export function failureRows({ suddenFailures }: LifeForecast): Plan["suddenFailures"] {
  return suddenFailures.map(({ item, lives, failures, packYears, shape, scaleYears, watchedFromYears, survival }) => ({
    item,
    lives,
    failures,
    packYears: roundUnits(packYears),
    shape: roundParameter(shape),
    scaleYears: roundParameter(scaleYears),
    watchedFromYears: roundUnits(watchedFromYears),
    survival: survival.map(({ years, atRisk, seen, standardError, planned }) => ({
      years,
      atRisk,
      seen: roundChance(seen),
      standardError: roundTo(standardError, CHANCE_DIGITS),
      planned: roundChance(planned),
    })),
  }));
}
