import { type Day, dayFromParts, partsOfDay } from "../../calendar/day.ts";
import { firstDayOfMonth, lastDayOfMonth, monthFromParts } from "../../calendar/month.ts";
import { foldAccents } from "../words/fold.ts";
import { monthOfWord } from "./month-words.ts";
import { EXPIRES } from "./says-expiry.ts";

/** The order of day, month and year in a column's dates. */
export type DateOrder = "dmy" | "mdy" | "ymd";

/**
 * What a date as written can mean. A day is a span of one day; a month, quarter or week alone is a longer one. A year alone
 * is none, but for what began in it.
 */
export type WrittenDate =
  | { kind: "span"; first: Day; last: Day; time: string; serial: boolean }
  | { kind: "ordered"; days: Record<DateOrder, Day | null>; dashed: boolean; time: string }
  | { kind: "bad"; because: string; year?: number };

/** Two-digit years from here on belong to the 1900s, below to the 2000s: the window that holds 1990 to 2089. */
const CENTURY_WINDOW = 90;

/** Days between the spreadsheet's day 0 (1899-12-30) and 1970-01-01; right from serial 61 (1 March 1900) on. */
const SERIAL_OF_1970 = 25_569;

/** Serials that lie in the years of the reading rules: 1990-01-01 and 2100-12-31. */
const SERIAL_RANGE = { from: 32_874, to: 73_415 } as const;

const NO_SUCH_DAY: WrittenDate = { kind: "bad", because: "the calendar has no such day" };
const TIME =
  /[t ,]\s*(\d{1,2}[:h]\d{2}(?::\d{2}(?:[.,]\d{1,9})?)?|\d{6}(?=z))\s*([ap]\.?m\.?)?\s*(?:uhr|z|utc|gmt|[a-z]{3,4}|[+-]\d{2}:?\d{2})?$/;

/** Words for expiry and service that people write before a date in its cell: "Exp: 03/2027". */
const SAYS_WHEN = new RegExp(
  `^(?:(?:ok|good|valid) )?(?:${EXPIRES}|w/c|week commencing|installed|inst|since|seit|depuis|desde|sinds)\\b[\\s.:]*(?=\\d|[a-z]{3})`,
  "u",
);

/** How long a thing lasts from a date on, in brackets behind it: "06/2022 (4 yr)". */
const TERM = /\s*\(\d{1,2} ?(?:y|yrs?|years?|j|jahre?|ans?|anos?|jaar|anni|m|mo|months?|monate?|mois|meses)\.?\)$/;

/** Dates read before: few days stand in many cells, and a column is looked over more than once. */
const known = new Map<string, WrittenDate | null>();
const MOST_KNOWN = 20_000;
const LONGEST_KNOWN = 40;

/** Reads one date as written, in any shape that the reading rules name; null where it looks like no date. */
export function readDateText(text: string): WrittenDate | null {
  const before = known.get(text);
  if (before !== undefined) return before;
  const written = read(text);
  if (known.size >= MOST_KNOWN) known.clear();
  if (text.length <= LONGEST_KNOWN) known.set(text, written);
  return written;
}

/** True for a text that is a date, in any such shape, of a day that the calendar has. */
export function isDate(text: string): boolean {
  return (readDateText(text)?.kind ?? "bad") !== "bad";
}

/** True for a text that is a date, whose first day is such in one of the orders in which it can be read. */
export function mayMean(text: string, such: (day: Day) => boolean): boolean {
  const written = readDateText(text);
  if (written?.kind === "span") return such(written.first);
  return written?.kind === "ordered" && Object.values(written.days).some((day) => day !== null && such(day));
}

function read(text: string): WrittenDate | null {
  let rest = foldAccents(text.replace(/[年月](?=\d)/g, "-").replace(/[月日]/, ""))
    .toLowerCase()
    .trim();
  const time = TIME.exec(rest);
  if (time && /\d/.test(rest.slice(0, time.index))) rest = rest.slice(0, time.index).replace(/,$/, "").trim();
  else rest = rest.replace(/(\d)(z|[+-]\d{2}:\d{2})$/, "$1");
  rest = rest.replace(SAYS_WHEN, "").replace(TERM, "");
  const clock = time ? `${time[1]}${time[2] ?? ""}` : "";
  return numericDate(rest, clock) ?? weekOrQuarter(rest) ?? namedMonthDate(rest, clock);
}

function span(first: Day | null, last: Day | null = first, time = "", serial = false): WrittenDate {
  return first === null || last === null ? NO_SUCH_DAY : { kind: "span", first, last, time, serial };
}

function monthSpan(year: number, month: number): WrittenDate {
  if (month < 1 || month > 12) return { kind: "bad", because: "no month has that number" };
  const at = monthFromParts(year, month);
  return span(firstDayOfMonth(at), lastDayOfMonth(at));
}

function fullYear(text: string): number {
  const year = Number(text);
  return text.length > 2 ? year : year + (year >= CENTURY_WINDOW ? 1900 : 2000);
}

function ordered(a: string, b: string, c: string, dashed: boolean, time: string): WrittenDate {
  const days = {
    dmy: dayFromParts(fullYear(c), Number(b), Number(a)),
    mdy: dayFromParts(fullYear(c), Number(a), Number(b)),
    ymd: c.length <= 2 && a.length === 2 ? dayFromParts(fullYear(a), Number(b), Number(c)) : null,
  };
  if (days.dmy === null && days.mdy === null && days.ymd === null) return NO_SUCH_DAY;
  return { kind: "ordered", days, dashed, time };
}

function numericDate(text: string, time: string): WrittenDate | null {
  let m = /^(\d{4})\s?[-/. ]\s?(\d{1,2})\s?[-/. ]\s?(\d{1,2})\.?$/.exec(text);
  if (m) return span(dayFromParts(Number(m[1]), Number(m[2]), Number(m[3])), undefined, time);
  m = /^(\d{1,2})\s?([-/. ])\s?(\d{1,2})\s?[-/. ]\s?'?(\d{4}|\d{2})$/.exec(text);
  if (m) return ordered(m[1]!, m[3]!, m[4]!, m[2] === "-", time);
  // "4711-01" is the number of an article
  m = /^((?:19|2[01])\d\d)\s?[-/.]\s?(\d{1,2})$/.exec(text);
  if (m) return monthSpan(Number(m[1]), Number(m[2]));
  m =
    /^(\d{1,2})\s?[-/. ]\s?(\d{4})$/.exec(text) ??
    /^(\d{1,2})\s?[-/]\s?'?(\d{2})$/.exec(text) ??
    /^(\d\d)\.(\d\d)$/.exec(text);
  if (m) return monthSpan(fullYear(m[2]!), Number(m[1]));
  m = /^(\d{4})-(\d{3})$/.exec(text);
  if (m) return dayOfYear(Number(m[1]), Number(m[2]), time);
  if (/^\d+(\.\d+)?$/.test(text)) return digitsDate(text, time);
  return null;
}

function dayOfYear(year: number, ordinal: number, time: string): WrittenDate {
  const first = dayFromParts(year, 1, 1);
  const next = dayFromParts(year + 1, 1, 1);
  return first === null || next === null || ordinal < 1 || first + ordinal > next
    ? NO_SUCH_DAY
    : span(first + ordinal - 1, undefined, time);
}

/** Bare digits: yyyymmdd, a spreadsheet's day number, or six digits where only one reading is possible. */
function digitsDate(text: string, time: string): WrittenDate {
  if (/^\d{8}$/.test(text)) {
    const day = dayFromParts(Number(text.slice(0, 4)), Number(text.slice(4, 6)), Number(text.slice(6)));
    return day !== null && inYears(day)
      ? span(day, undefined, time)
      : ordered(text.slice(0, 2), text.slice(2, 4), text.slice(4), true, time);
  }
  const serial = Math.floor(Number(text));
  if (/^\d{5}(\.\d+)?$/.test(text) && serial >= SERIAL_RANGE.from && serial <= SERIAL_RANGE.to) {
    return span(serial - SERIAL_OF_1970, undefined, "", true);
  }
  if (/^\d{6}$/.test(text)) {
    const [a, b, c] = [text.slice(0, 2), text.slice(2, 4), text.slice(4)];
    const yearFirst = Number(a + b) >= 1990 && Number(a + b) <= 2100 && Number(c) >= 1 && Number(c) <= 12;
    const yearLast = Number(b + c) >= 1990 && Number(b + c) <= 2100 && Number(a) >= 1 && Number(a) <= 12;
    const triple = ordered(a, b, c, true, time);
    if (Number(yearFirst) + Number(yearLast) + Number(triple.kind === "ordered") > 1) {
      return { kind: "bad", because: "six digits can be several dates" };
    }
    if (yearFirst) return monthSpan(Number(a + b), Number(c));
    return yearLast ? monthSpan(Number(b + c), Number(a)) : triple;
  }
  if (/^\d{4}$/.test(text)) return fourDigits(text);
  return { kind: "bad", because: "the digits are no date" };
}

/** Four digits: a year, or a month and a year of two digits where only one order of them is possible. */
function fourDigits(text: string): WrittenDate {
  const year = Number(text);
  if (year >= 1990 && year <= 2100) return { kind: "bad", because: "a year alone names no month", year };
  const [a, b] = [text.slice(0, 2), text.slice(2)];
  const isMonth = (part: string) => Number(part) >= 1 && Number(part) <= 12;
  if (isMonth(a) && isMonth(b)) return { kind: "bad", because: "four digits can be several months" };
  if (isMonth(a)) return monthSpan(fullYear(b), Number(a));
  return isMonth(b) ? monthSpan(fullYear(a), Number(b)) : { kind: "bad", because: "the digits are no date" };
}

function inYears(day: Day): boolean {
  return day >= SERIAL_RANGE.from - SERIAL_OF_1970 && day <= SERIAL_RANGE.to - SERIAL_OF_1970;
}

const WEEK_WORD = "(?:w|wk|week|cw|kw|woche|kalenderwoche|sem|semaine|semana|s)";
const QUARTER_WORD = "(?:q|qtr|quarter|quartal|quart|trimestre|trim|trimester|kwartaal|t)";
const YEAR = "'?(\\d{4}|\\d{2})";
const GAP = "[\\s.,/-]*";
const WEEKS = [new RegExp(`^(\\d{4})${GAP}${WEEK_WORD}${GAP}(\\d{1,2})(?:-(\\d))?$`), /^(\d{4})w(\d{2})(\d)$/];
const WEEK_FIRST = new RegExp(`^${WEEK_WORD}${GAP}(\\d{1,2})[\\s.,/-]+${YEAR}$`);
const QUARTERS = new RegExp(`^(\\d{4})${GAP}${QUARTER_WORD}${GAP}([1-4])$`);
const HALF_YEAR = new RegExp(`^(\\d{4})${GAP}(?:h|hj)([12])$`);
const QUARTER_FIRST = new RegExp(`^${QUARTER_WORD}${GAP}([1-4])[\\s.,/-]+${YEAR}$`);
const QUARTER_NAMED = new RegExp(
  `^([1-4]|i{1,3}|iv)(?:\\.|st|nd|rd|th|er|e|eme|o|a|ste|de)?\\s*${QUARTER_WORD}${GAP}${YEAR}$`,
);

const ROMAN = ["i", "ii", "iii", "iv"];

function weekOrQuarter(text: string): WrittenDate | null {
  for (const form of WEEKS) {
    const m = form.exec(text);
    if (m) return isoWeek(Number(m[1]), Number(m[2]), m[3] === undefined ? null : Number(m[3]));
  }
  const week = WEEK_FIRST.exec(text);
  if (week) return isoWeek(fullYear(week[2]!), Number(week[1]), null);
  const half = HALF_YEAR.exec(text);
  if (half) return half[2] === "1" ? months(Number(half[1]), 1, 6) : months(Number(half[1]), 7, 12);
  const yearFirst = QUARTERS.exec(text);
  if (yearFirst) return quarter(Number(yearFirst[1]), Number(yearFirst[2]));
  const named = QUARTER_FIRST.exec(text) ?? QUARTER_NAMED.exec(text);
  return named ? quarter(fullYear(named[2]!), ROMAN.indexOf(named[1]!) + 1 || Number(named[1])) : null;
}

function quarter(year: number, number: number): WrittenDate {
  return months(year, number * 3 - 2, number * 3);
}

function months(year: number, from: number, to: number): WrittenDate {
  return span(firstDayOfMonth(monthFromParts(year, from)), lastDayOfMonth(monthFromParts(year, to)));
}

/** ISO 8601: week 1 holds 4 January, weeks start on Monday, and each is of the year that holds its Thursday. */
function isoWeek(year: number, week: number, weekday: number | null): WrittenDate {
  const fourth = dayFromParts(year, 1, 4);
  if (fourth === null || week < 1 || week > 53 || (weekday !== null && (weekday < 1 || weekday > 7)))
    return NO_SUCH_DAY;
  const monday = fourth - ((((fourth + 3) % 7) + 7) % 7) + (week - 1) * 7;
  if (partsOfDay(monday + 3).year !== year) return { kind: "bad", because: `${year} has no week ${week}` };
  return weekday === null ? span(monday, monday + 6) : span(monday + weekday - 1);
}

/** Words that may stand in a date and say nothing of it: endings, articles and the days of the week. */
const FILLER =
  /^(?:[snr][td]|th|e[rm]?e?|d[eu][lrn]?|the|of|el|l[eu]|van|vom|[a-z]{2,7}(?:[dt]ag|day|di)|mittwoch|dimanche|lunes|martes|miercoles|jueves|viernes|sabado|domingo|mon|tue?s?|wed|thu(?:rs?)?|fri|sat|sun|[mds][io]|fr|sa)$/;
const END_WORDS = new Set("end ende fin fine eind einde ultimo".split(" "));

function namedMonthDate(text: string, time: string): WrittenDate | null {
  const parts = text.match(/\d+|[a-z]+/g);
  if (!parts || parts.length > 7 || /[^a-z\d\s.,/'()ºª-]/.test(text)) return null;
  let month: number | null = null;
  let atEnd = false;
  const numbers: { text: string; afterMonth: boolean }[] = [];
  for (const part of parts) {
    if (/^\d/.test(part)) {
      numbers.push({ text: part, afterMonth: month !== null });
      continue;
    }
    const named: number | null = month === null ? monthOfWord(part) : null;
    if (named !== null) month = named;
    else if (END_WORDS.has(part)) atEnd = true;
    else if (!FILLER.test(part)) return null;
  }
  if (month === null) {
    const inner = atEnd || /\d[-/.]\d+[-/.]\d/.test(text) ? numericDate(text.replace(/^[a-z\s.,]+/, ""), time) : null;
    if (!atEnd) return inner;
    if (inner?.kind === "bad") return inner.year === undefined ? null : span(dayFromParts(inner.year, 12, 31));
    return inner?.kind === "span" ? span(inner.last) : null;
  }
  return withMonth(month, numbers, atEnd, time);
}

function withMonth(
  month: number,
  numbers: { text: string; afterMonth: boolean }[],
  atEnd: boolean,
  time: string,
): WrittenDate {
  const [one, two, three] = numbers;
  if (!one || three || numbers.some(({ text }) => text.length > 4 || text.length === 3)) {
    return { kind: "bad", because: "a month's name needs a year" };
  }
  if (!two) {
    if (one.text.length < 4 && !one.afterMonth) return { kind: "bad", because: "the year is missing" };
    if (one.text.length < 2) return { kind: "bad", because: "the year is missing" };
    const whole = monthSpan(fullYear(one.text), month);
    return atEnd && whole.kind === "span" ? span(whole.last) : whole;
  }
  const [year, day] = one.text.length === 4 ? [one.text, two.text] : [two.text, one.text];
  if (day.length > 2 || year.length === 1) return NO_SUCH_DAY;
  return span(dayFromParts(fullYear(year), month, Number(day)), undefined, time);
}
