import type { Day } from "../../calendar/day.ts";
import { readDateText } from "../values/date-text.ts";
import { datesWithCounts } from "../values/listed-supplies.ts";
import { readNumber } from "../values/number-text.ts";
import { unitsInPacks } from "../values/units.ts";

/** How many of a column's texts are dates and numbers. */
export interface DatesAndNumbers {
  /** Dates in any written form but bare numbers. */
  dates: number;
  numbers: number;
  /** The first and the last of the dates, where an open order of day and month is read as day first; Infinity and -Infinity where there are none. */
  earliest: Day;
  latest: Day;
}

/** Lengths of time written as clock times; and "€ 12", "x10" and "-5" count as numbers, "I-1" and "B2" do not. */
const CLOCK = /^\d{1,3}\s*(:|h)\s*[0-5]\d/i;
const STARTS_AS_NUMBER = /^[€$£~x×\s]{0,3}[+-]?[\d.,]/i;

/** Counts the dates and the numbers among texts. */
export function datesAndNumbers(texts: readonly string[]): DatesAndNumbers {
  let dates = 0;
  let numbers = 0;
  let earliest = Infinity;
  let latest = -Infinity;
  for (const text of texts) {
    if (datesWithCounts(text, false).length > 0) {
      dates++;
      continue;
    }
    const bare = /^\d+([.,]\d+)?$/.test(text);
    const written = bare ? null : readDateText(text);
    if (written !== null && written.kind !== "bad") {
      dates++;
      const day = written.kind === "span" ? written.last : (written.days.dmy ?? written.days.mdy ?? written.days.ymd);
      if (day !== null && day < earliest) earliest = day;
      if (day !== null && day > latest) latest = day;
    } else if (written?.kind === "bad" && written.year !== undefined) {
      dates++;
    } else if (
      STARTS_AS_NUMBER.test(text) &&
      ((readNumber(text, ".") ?? unitsInPacks(text)) !== null || CLOCK.test(text))
    )
      numbers++;
  }
  return { dates, numbers, earliest, latest };
}
