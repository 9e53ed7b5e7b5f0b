import { foldAccents } from "../words/fold.ts";

/** Words for periods, and how many make a year. */
const PERIODS: readonly [RegExp, number][] = [
  [/^(days?|daily|tage?|jours?|dias?|dag|dagen)$/, 365],
  [/^(wks?|weeks?|weekly|wochen?|semaines?|semanas?|week|weken)$/, 52],
  [/^(mos?|mths?|months?|monthly|monate?|mois|mes|meses|maand|maanden)$/, 12],
  [/^(quarters?|quartale?|trimestres?|kwartaal)$/, 4],
  [/^(yrs?|years?|yearly|annum|jahre?|ans?|anos?|jaar)$/, 1],
];
const NUMBERS: Record<string, number> = {
  two: 2,
  three: 3,
  four: 4,
  six: 6,
  zwei: 2,
  drei: 3,
  deux: 2,
  dos: 2,
  other: 2,
};
const EVERY =
  /^(?:once )?(every|each|alle|tous les|toutes les|cada|elke|om de)?\s*(\d{1,3}|\p{L}+(?= ))?[\s-]*(\p{L}+)\.?$/u;
const SO_OFTEN =
  /^(once|twice|einmal|zweimal|une fois|deux fois)[\s/]+(?:a|an|per|every|each|pro|im|par)?\s*(\p{L}+)\.?$/u;
const TWICE = /^(twice|zweimal|deux)/;

/** How often a year "every 6 months", "6-monthly", "12 months" or "twice a year" is; null for other texts. */
export function timesAYear(text: string): number | null {
  const said = foldAccents(text.trim().toLowerCase());
  const [, often, of] = SO_OFTEN.exec(said) ?? [];
  if (often !== undefined) return times(TWICE.test(often) ? 2 : 1, of);
  const [, every, many, period] = EVERY.exec(said) ?? [];
  if (every === undefined && !/^\d/.test(many ?? "")) return null;
  const number = many === undefined ? 1 : Number(many) || NUMBERS[many];
  return number === undefined ? null : times(1 / number, period);
}

function times(number: number, period = ""): number | null {
  const [, ofYear] = PERIODS.find(([words]) => words.test(period)) ?? [];
  return ofYear === undefined ? null : number * ofYear;
}
