import type { Day } from "../../calendar/day.ts";
import { cellAt, type GridRow } from "../grid.ts";
import { cellText, MAX_TYPED_CHARACTERS, meansEmpty } from "../values/cell-text.ts";
import { saysResult } from "../values/choice-words.ts";
import { readDateText } from "../values/date-text.ts";
import { type CellPart, cellPart } from "../values/lot-and-date.ts";
import { readNumber } from "../values/number-text.ts";
import { isUnitWord } from "../values/units.ts";
import { headerWords } from "../words/header-words.ts";
import { VOCABULARY } from "../words/vocabulary.ts";

/** What a sample of a column's cells looks like, each as a share of its filled cells. */
export interface Profile {
  filled: number;
  /** Share of all the rows looked at in which nothing stands, or 0. */
  nothing: number;
  /** Dates in any written form but bare numbers. */
  dates: number;
  numbers: number;
  /** The first and the last of the dates, where an open order of day and month is read as day first; Infinity and -Infinity where there are none. */
  earliest: Day;
  latest: Day;
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
  /** Shares of the different texts that name a device, a battery, and a place such as a vehicle. */
  devices: number;
  batteries: number;
  places: number;
  /** True where all cells are bare whole numbers from 1,000 to 99,999. */
  thousands: boolean;
  /** Share of the different texts that are units of measure, such as "pcs" or "box". */
  measures: number;
  /** True where the cells count the rows: 1, 2, 3. */
  counts: boolean;
  /** True where every cell is a whole number such as a place has of one thing, and whether words stand behind them ("3 devices"). */
  fewEach: boolean;
  worded: boolean;
  /** True where they are such numbers and not all 1. */
  severalEach: boolean;
  /** True where several cells are all whole numbers from 50 to 100, as charges in percent are. */
  levels: boolean;
}

/** A whole number under a thousand, with at most a word behind it. */
const FEW = /^\d{1,3}( \p{L}+)?$/u;

/** Rows looked at: enough to tell a column's nature, few enough to cost nothing. */
const SAMPLE = 120;

/** Lengths of time written as clock times; and "€ 12", "x10" and "-5" count as numbers, "I-1" and "B2" do not. */
const CLOCK = /^\d{1,3}\s*(:|h)\s*[0-5]\d/i;
const STARTS_AS_NUMBER = /^[€$£~x×\s]{0,3}[+-]?[\d.,]/i;

const YES = /^(y|yes|ja|j|oui|o|si|sí|x|ok|true)$/i;

/** What a test's number is by the unit of its cells. */
export const MEASURE_BY_UNIT: Readonly<Record<string, string>> = {
  "%": "capacity",
  min: "minutes",
  ah: "ah",
  mah: "ah",
  wh: "wh",
};

/** The capacity unit behind a number. */
const UNIT = /^[\d.,]+\s*(m?a[·⋅∙]?h|w[·⋅∙]?h|min|%)$/i;
const YES_NO = /^(y|yes|n|no|ja|j|nein|oui|o|non|si|sí|s|nee|x|ok|true|false)$/i;

const EMPTY: Profile = {
  filled: 0,
  nothing: 1,
  dates: 0,
  numbers: 0,
  earliest: Infinity,
  latest: -Infinity,
  distinct: 0,
  labels: 0,
  yesNo: 0,
  results: 0,
  unit: "",
  devices: 0,
  batteries: 0,
  places: 0,
  thousands: false,
  measures: 0,
  counts: false,
  fewEach: false,
  worded: false,
  severalEach: false,
  levels: false,
};

/** The profile of one column (0-based) over a sample spread evenly over the rows. */
export function profileColumn(rows: readonly GridRow[], column: number, part: CellPart | null = null): Profile {
  const step = Math.max(1, Math.floor(rows.length / SAMPLE));
  const texts: string[] = [];
  let looked = 0;
  for (let i = 0; i < rows.length; i += step, looked++) {
    const row = rows[i];
    const cell = (row && cellAt(row, column)) ?? null;
    const text = cellText(part === null ? cell : cellPart(cell, part));
    if (!meansEmpty(text)) texts.push(text);
  }
  if (texts.length === 0) return EMPTY;
  let dates = 0;
  let numbers = 0;
  let earliest = Infinity;
  let latest = -Infinity;
  let labels = 0;
  let yesNo = 0;
  let yes = false;
  let results = 0;
  const units = new Map<string, number>();
  for (const text of texts) {
    if (/^(\]C1|\]d2|\]Q3|\]e0|\(01\)|\+[A-Z][A-Z0-9]{3}|01\d{14}(1[0157]|21|30))/i.test(text)) labels++;
    if (text.length > MAX_TYPED_CHARACTERS) continue;
    const unit = UNIT.exec(text)?.[1]?.toLowerCase().replace(/[·⋅∙]/, "");
    if (unit !== undefined) units.set(unit, (units.get(unit) ?? 0) + 1);
    if (YES_NO.test(text)) yesNo++;
    if (YES.test(text)) yes = true;
    if (saysResult(text)) results++;
    const bare = /^\d+([.,]\d+)?$/.test(text);
    const written = bare ? null : readDateText(text);
    if (written !== null && written.kind !== "bad") {
      dates++;
      const day = written.kind === "span" ? written.last : (written.days.dmy ?? written.days.mdy ?? written.days.ymd);
      if (day !== null && day < earliest) earliest = day;
      if (day !== null && day > latest) latest = day;
    } else if (written?.kind === "bad" && written.year !== undefined) {
      dates++;
    } else if (STARTS_AS_NUMBER.test(text) && (readNumber(text, ".") !== null || CLOCK.test(text))) numbers++;
  }
  const filled = texts.length;
  const fewEach = texts.every((text) => FEW.test(text));
  const different = new Set(texts);
  const [unit = "", carried = 0] = [...units].sort((a, b) => b[1] - a[1])[0] ?? [];
  const total = [...units.values()].reduce((sum, count) => sum + count, 0);
  return {
    filled,
    nothing: 1 - texts.filter((text) => text !== "0").length / looked,
    dates: dates / filled,
    numbers: numbers / filled,
    earliest,
    latest,
    distinct: different.size / filled,
    labels: labels / filled,
    yesNo: yes ? yesNo / filled : 0,
    results: results / filled,
    unit: total > filled / 2 && carried > 0 ? unit : "",
    devices: shareNaming("device", different),
    batteries: shareNaming("battery", different),
    places: shareNaming("place", different),
    measures:
      [...different].slice(0, NAMES).filter((text) => isUnitWord(text.toLowerCase())).length /
      Math.min(NAMES, different.size),
    thousands: texts.every((text) => /^[1-9]\d{3,4}$/.test(text)),
    fewEach,
    severalEach: fewEach && texts.some((text) => Number.parseInt(text, 10) > 1),
    levels: filled > 1 && texts.every((text) => /^([5-9]\d|100)$/.test(text)),
    worded: fewEach && texts.some((text) => / /.test(text)),
    counts: step === 1 && filled > 1 && texts.every((text, at) => text === String(at + 1)),
  };
}

/** Texts looked at for what they name. */
const NAMES = 20;

/** The share of texts one of whose words names a thing. */
function shareNaming(thing: string, texts: ReadonlySet<string>): number {
  const some = [...texts].slice(0, NAMES).filter((text) => text.length < 60 && /[a-z]{3}/i.test(text));
  const naming = some.filter((text) =>
    headerWords(text)
      .split(" ")
      .some((word) => VOCABULARY.get(word) === thing),
  );
  return naming.length / Math.max(1, some.length);
}
