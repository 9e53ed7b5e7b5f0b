import { counted } from "../fleet/count-text.ts";
import type { LifeForecast } from "../life/types.ts";
import type { Plan } from "./plan-schema.ts";
import { roundChance, roundTo, roundUnits } from "./rounding.ts";

/** Digits kept of how many times as fast something wears. */
const PACE_DIGITS = 3;

/** Early signs as plan rows, groups before packs, the fastest first. */
export function signRows({ earlySigns }: LifeForecast): Plan["earlySigns"] {
  const pace = (value: number) => roundTo(value, PACE_DIGITS);
  return earlySigns.map(
    ({ kind, item, name, packs, timesAsFast, atLeast, chance, inService, dueWithinYear, says }) => ({
      kind,
      item,
      name,
      packs,
      timesAsFast: { p10: pace(timesAsFast.p10), p50: pace(timesAsFast.p50), p90: pace(timesAsFast.p90) },
      atLeast,
      chance: roundChance(chance),
      inService,
      dueWithinYear: roundUnits(dueWithinYear),
      says,
    }),
  );
}

/**
 * The first early signs as sentences, then how many more there are.
 *
 * @param where  where the rest can be read
 */
export function signsTold({ earlySigns }: Pick<Plan, "earlySigns">, most: number, where: string): string[] {
  const more = earlySigns.length - most;
  return [
    ...earlySigns.slice(0, most).map(({ says }) => says),
    ...(more > 0 ? [`${counted(more, "more", "more")} in ${where}.`] : []),
  ];
}
