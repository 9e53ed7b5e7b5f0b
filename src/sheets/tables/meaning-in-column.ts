import type { GridRow } from "../grid.ts";
import { textsAt } from "../values/cell-text.ts";
import { type HeaderMeaning, parseHeader, tellsStatus } from "../words/parse-header.ts";
import { MEASURE_BY_UNIT } from "./carried-unit.ts";
import type { Profile } from "./profile.ts";
import { MOSTLY_DIFFERENT, MOSTLY_RESULTS } from "./score-column.ts";
import { toldByCells } from "./told-by-cells.ts";

/** Rows in which years are looked for. */
const ROWS_LOOKED_AT = 40;
const MOSTLY = 0.5;
const IN_USE = /\b(in use|installed|fitted|loaded|mounted|inserted|eingebaut|eingesetzt)$/;
const UNTIL = /^(until|bis|au|hasta|tot)$/;
const FROM = /^(since|from|out|von|seit|du|desde|van)\b/i;
const YEAR = /(?<!\d)(19|20)\d\d$/;

/**
 * What a header says of the column below it, whose cells and neighbour may settle what its words leave open.
 *
 * @param before  the header on its left; null or undefined where there is none
 * @param whole   what the column's cells are
 * @param column  0-based
 */
export function meaningInColumn(
  name: string,
  before: string | null | undefined,
  whole: Profile,
  rows: readonly GridRow[],
  column: number,
): HeaderMeaning {
  const told = toldByCells(withCellUnit(asSince(parseHeader(name), before), whole), rows, column);
  return asInUse(asCount(asDay(asMeasure(told, whole), whole), whole), whole, rows, column);
}

/**
 * "Since" behind a status heads the days from which things have stood so, and not those of their fitting; "until" behind
 * "from" those to which something lasts, and no expiry.
 */
function asSince(meaning: HeaderMeaning, before: string | null | undefined): HeaderMeaning {
  if (UNTIL.test(meaning.words) && FROM.test(before ?? "")) return { ...meaning, says: "aside" };
  return (/^(since|seit|depuis|desde)$/.test(meaning.words) || meaning.says === "install status") &&
    (tellsStatus(parseHeader(before ?? "")) || /^(now|current)\b/i.test(before ?? ""))
    ? { ...meaning, says: "since" }
    : meaning;
}

/** A column headed "Unit" below which units of measure stand, and no vehicles, as what it is; "per" also above numbers. */
function asMeasure(meaning: HeaderMeaning, { measures, numbers }: Profile): HeaderMeaning {
  return (meaning.says === "unit" && measures > 0.5) || (meaning.words === "per" && measures + numbers > 0.5)
    ? { ...meaning, says: "priceper" }
    : meaning;
}

/** What is measured, where only a column's cells say so: "3900 mAh" under "Capacity" or "Rated", "91 %" or "pass" under "Test 1". */
function withCellUnit(meaning: HeaderMeaning, { unit, results, thousands }: Profile): HeaderMeaning {
  const { says, things } = meaning;
  const isTest = says === "" && /\btest$/.test(things);
  const isCapacity = /capacity|rated/.test(says);
  // no battery holds so many ampere hours, watt hours or percent
  const inMilli = isCapacity && thousands && !/\b(ah|wh|minutes)\b/.test(says);
  const measure = inMilli ? "ah" : MEASURE_BY_UNIT[unit || (isTest ? meaning.unit : "")];
  if (isTest && results > MOSTLY_RESULTS) return { ...meaning, says: "result" };
  if (measure !== undefined && (isTest || says === "result"))
    return { ...meaning, says: measure, words: `test ${measure}` };
  const known = says.split(" ");
  if (measure === undefined || !isCapacity || known.includes(measure)) return meaning;
  return { ...meaning, says: [...known, measure].sort().join(" "), ...(inMilli && { unit: "mah" }) };
}

/** "Tag" heads days in German, and names of things in English; "Month" and "vom" head dates where they stand below them. */
function asDay(meaning: HeaderMeaning, { dates }: Profile): HeaderMeaning {
  return /^(tag|month|monat|mois|mes|maand|week|woche|semaine|semana|quarter|quartal|trimestre|kwartaal|vom|am|le|on)$/.test(
    meaning.words,
  ) && dates > MOSTLY
    ? { ...meaning, says: "date", coverage: 1 }
    : meaning;
}

/** "Counted" heads days on which something was read off, and, above small numbers, how many there were. */
function asCount(meaning: HeaderMeaning, { numbers, dates, fewEach }: Profile): HeaderMeaning {
  const counts = /^counted$/.test(meaning.words) || (meaning.says === "asof" && fewEach);
  return counts && dates === 0 && numbers > MOSTLY ? { ...meaning, says: "quantity" } : meaning;
}

/** "Battery in use", or "installed", above names and no days or years heads the batteries themselves. */
function asInUse(meaning: HeaderMeaning, whole: Profile, rows: readonly GridRow[], column: number): HeaderMeaning {
  if (meaning.things !== "battery" || meaning.says !== "install" || !IN_USE.test(meaning.words)) return meaning;
  const { filled, dates, distinct, levels, fewEach, yesNo } = whole;
  const texts = textsAt(rows.slice(0, ROWS_LOOKED_AT), column);
  const names = filled > 0 && dates === 0 && distinct > MOSTLY_DIFFERENT && !levels && !fewEach && yesNo === 0;
  return names && !texts.some((text) => YEAR.test(text)) ? { ...meaning, says: "" } : meaning;
}
