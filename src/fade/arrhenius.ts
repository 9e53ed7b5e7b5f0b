/** Boltzmann's constant, eV/K (CODATA 2018). */
const BOLTZMANN_EV_PER_K = 8.617333262e-5;
const KELVIN_AT_0_C = 273.15;

/**
 * How much faster a process runs at one temperature than at another, by Arrhenius' law
 * exp(Ea/k (1/T_reference - 1/T)).
 *
 * @param activationEv  activation energy, eV, >= 0
 * @param celsius       temperature, °C
 * @param referenceC    temperature at which the factor is 1, °C
 */
export function arrheniusFactor(activationEv: number, celsius: number, referenceC: number): number {
  const inverse = 1 / (referenceC + KELVIN_AT_0_C) - 1 / (celsius + KELVIN_AT_0_C);
  return Math.exp((activationEv / BOLTZMANN_EV_PER_K) * inverse);
}
