import type { GridRow } from "../grid.ts";
import { cellText, MAX_TYPED_CHARACTERS, meansEmpty } from "../values/cell-text.ts";
import { readDateText } from "../values/date-text.ts";
import { readNumber } from "../values/number-text.ts";

/** What a sample of a column's cells looks like, each as a share of its filled cells. */
export interface Profile {
  filled: number;
  /** Dates in any written form but bare numbers. */
  dates: number;
  numbers: number;
  /** Share of the dates that lie after the sample's year of reference. */
  future: number;
  /** Share of different texts among the filled cells. */
  distinct: number;
  /** Scans of labels. */
  labels: number;
}

/** Rows looked at: enough to tell a column's nature, few enough to cost nothing. */
const SAMPLE = 120;

/** Lengths of time written as clock times; and "€ 12", "x10" and "-5" count as numbers, "I-1" and "B2" do not. */
const CLOCK = /^\d{1,3}\s*(:|h)\s*[0-5]\d/i;
const STARTS_AS_NUMBER = /^[€$£~x×\s]{0,3}[+-]?[\d.,]/i;

const EMPTY: Profile = { filled: 0, dates: 0, numbers: 0, future: 0, distinct: 0, labels: 0 };

/** The profile of one column (0-based) over a sample spread evenly over the rows. */
export function profileColumn(rows: readonly GridRow[], column: number, today: number | null): Profile {
  const step = Math.max(1, Math.floor(rows.length / SAMPLE));
  const texts: string[] = [];
  for (let i = 0; i < rows.length; i += step) {
    const text = cellText(rows[i]?.cells[column] ?? null);
    if (!meansEmpty(text)) texts.push(text);
  }
  if (texts.length === 0) return EMPTY;
  let dates = 0;
  let numbers = 0;
  let future = 0;
  let labels = 0;
  for (const text of texts) {
    if (/^(\]C1|\]d2|\]Q3|\]e0|\(01\)|\+[A-Z][A-Z0-9]{3}|01\d{14}(1[0157]|21|30))/i.test(text)) labels++;
    if (text.length > MAX_TYPED_CHARACTERS) continue;
    const bare = /^\d+([.,]\d+)?$/.test(text);
    const written = bare ? null : readDateText(text);
    if (written !== null && written.kind !== "bad") {
      dates++;
      const day = written.kind === "span" ? written.last : (written.days.dmy ?? written.days.mdy ?? 0);
      if (today !== null && day > today) future++;
    } else if (STARTS_AS_NUMBER.test(text) && (readNumber(text, ".") !== null || CLOCK.test(text))) numbers++;
  }
  const filled = texts.length;
  return {
    filled,
    dates: dates / filled,
    numbers: numbers / filled,
    future: dates === 0 ? 0 : future / dates,
    distinct: new Set(texts).size / filled,
    labels: labels / filled,
  };
}
