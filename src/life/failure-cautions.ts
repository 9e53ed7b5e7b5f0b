import { chanceText, counted, countText } from "../fleet/count-text.ts";
import { cumulativeHazard, type FailureRisk } from "./sudden-failures.ts";

/** Lives that must still be watched for a share seen to be worth saying. */
const ENOUGH_AT_RISK = 5;
/** Age from which what nobody watched before it must be told. */
export const LATE_YEARS = 0.5;
/** Years over which the yearly rate is told. */
const FIRST_YEARS = 5;

const percent = (share: number) => `${Number((share * 100).toPrecision(2))} %`;

/** What is taken for granted of sudden failures, for people: one sentence an item that has shown some, one for the rest. */
export function failureCautions(risks: readonly { item: string; risk: FailureRisk }[]): string[] {
  const shown = risks.filter(({ risk }) => risk.failures > 0);
  const silent = risks.filter(({ risk }) => risk.failures === 0);
  const cautions = shown.map(({ item, risk }) => {
    const { failures, lives, packYears, watchedFromYears: from } = risk;
    const rate = percent(cumulativeHazard(risk, FIRST_YEARS) / FIRST_YEARS);
    const last = risk.seen.filter((step) => step.atRisk >= ENOUGH_AT_RISK).at(-1);
    const seen =
      last === undefined
        ? ""
        : `, and ${chanceText(last.survival)}${from < LATE_YEARS ? "" : ` of those that reached ${from.toFixed(1)} years`} were seen to outlive ${last.age.toFixed(1)} years without one`;
    return `${countText(failures)} of ${countText(lives)} ${item} failed suddenly in ${counted(Math.round(packYears), "pack-year")} on record${seen}: the plan counts on ${rate} a year over the first ${FIRST_YEARS}.`;
  });
  if (silent.length > 0) {
    const names = silent.map(({ item }) => item).join(", ");
    cautions.push(
      `No sudden failure is on record for ${names}: the plan counts on half a percent a year or less, which is common practice and not your own figure.`,
    );
  }
  return cautions;
}
