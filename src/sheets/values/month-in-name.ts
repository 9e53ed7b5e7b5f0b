import { type Month, monthFromParts } from "../../calendar/month.ts";
import { foldAccents } from "../words/fold.ts";
import { monthOfWord } from "./month-words.ts";

/** When the name of a file or tab says that it was written, and what it says besides. */
export interface MonthInName {
  /** The month; with a day a part of one more. */
  time: number;
  rest: string;
}

/**
 * The month in a name such as "Check 2026-09", "Sept", "Oct 26" or "2026_09_15"; null where none stands there. Without a
 * year it is the last one of its name up to the month given.
 */
export function monthInName(name: string, upTo: Month): MonthInName | null {
  const words =
    foldAccents(name)
      .toLowerCase()
      .match(/\p{L}+|\d+/gu) ?? [];
  const spoken = words.findIndex((word) => monthOfWord(word) !== null);
  const isMonth = (at: number) => at === spoken || (spoken === -1 && /^(0?[1-9]|1[0-2])$/.test(words[at] ?? ""));
  const full = words.findIndex((word, at) => /^20\d\d$/.test(word) && (isMonth(at - 1) || isMonth(at + 1)));
  const year = full === -1 && spoken !== -1 && /^\d\d$/.test(words[spoken + 1] ?? "") ? spoken + 1 : full;
  const at = isMonth(year + 1) && year !== -1 ? year + 1 : spoken === -1 ? year - 1 : spoken;
  if (at < 0) return null;
  const number = monthOfWord(words[at]!) ?? Number(words[at]);
  const day = at === year + 1 && year !== -1 && /^\d\d?$/.test(words[at + 1] ?? "") ? at + 1 : -1;
  const rest = words.filter((_, place) => ![at, year, day].includes(place)).join(" ");
  const month =
    year === -1 ? upTo - ((upTo - (number - 1)) % 12) : monthFromParts((Number(words[year]) % 2000) + 2000, number);
  return { time: month + Number(words[day] ?? 0) / 32, rest };
}
