import type { GridRow } from "../grid.ts";
import { MAX_TYPED_CHARACTERS } from "../values/cell-text.ts";
import { saysResult } from "../values/choice-words.ts";
import type { CellPart } from "../values/lot-and-date.ts";
import { carriedUnit } from "./carried-unit.ts";
import { type WholeNumbers, wholeNumbers } from "./profile-counts.ts";
import { type DatesAndNumbers, datesAndNumbers } from "./profile-dates.ts";
import { type ThingsNamed, thingsNamed } from "./profile-names.ts";
import { sampleColumn } from "./profile-sample.ts";

/** What a sample of a column's cells looks like, each as a share of its filled cells. */
export interface Profile extends DatesAndNumbers, ThingsNamed, WholeNumbers {
  filled: number;
  /** Share of all the rows looked at in which nothing stands, or 0. */
  nothing: number;
  /** Share of different texts among the filled cells. */
  distinct: number;
  /** Scans of labels. */
  labels: number;
  /** Words for yes and no. */
  yesNo: number;
  /** Words for passed and failed. */
  results: number;
  /** The unit that most cells carry, lower case; empty where none. */
  unit: string;
}

const LABEL = /^(\]C1|\]d2|\]Q3|\]e0|\(01\)|\+[A-Z][A-Z0-9]{3}|01\d{14}(1[0157]|21|30))/i;
const YES = /^(y|yes|ja|j|oui|o|si|sí|x|ok|true)$/i;
const YES_NO = /^(y|yes|n|no|ja|j|nein|oui|o|non|si|sí|s|nee|x|ok|true|false)$/i;

/** The profile of one column (0-based) over a sample spread evenly over the rows. */
export function profileColumn(rows: readonly GridRow[], column: number, part: CellPart | null = null): Profile {
  const sample = sampleColumn(rows, column, part);
  const { texts, looked } = sample;
  const typed = texts.filter(({ length }) => length <= MAX_TYPED_CHARACTERS);
  const different = new Set(texts);
  const share = (count: number) => count / Math.max(1, texts.length);
  const shareOf = (some: readonly string[], is: (text: string) => boolean) => share(some.filter(is).length);
  const { dates, numbers, ...days } = datesAndNumbers(typed);
  return {
    filled: texts.length,
    nothing: 1 - texts.filter((text) => text !== "0").length / Math.max(1, looked),
    dates: share(dates),
    numbers: share(numbers),
    ...days,
    distinct: share(different.size),
    labels: shareOf(texts, (text) => LABEL.test(text)),
    yesNo: typed.some((text) => YES.test(text)) ? shareOf(typed, (text) => YES_NO.test(text)) : 0,
    results: shareOf(typed, saysResult),
    unit: carriedUnit(typed, texts.length),
    ...thingsNamed(different),
    ...wholeNumbers(sample),
  };
}
