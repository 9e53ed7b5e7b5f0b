import { type Day, dayFromParts, isoFromDay } from "../../calendar/day.ts";
import type { ColumnSpec } from "../../fleet/columns.ts";
import { cellText, MAX_TYPED_CHARACTERS, meansEmpty } from "./cell-text.ts";
import { readChoice, readYesNo, resultOf } from "./choice-words.ts";
import { type DateOrder, readDateText } from "./date-text.ts";
import { readBreaks, readList, readMoney } from "./lists-and-money.ts";
import { NothingLeft } from "./nothing-left.ts";
import { type DecimalMark, readNumber, type WrittenNumber } from "./number-text.ts";
import { outOfBounds, Problem } from "./problem.ts";
import { type Gone, goneSince, standingOf } from "./status-words.ts";
import { timesAYear } from "./times-a-year.ts";
import { isBoxWord, packIn, unitFactor, unitsInPacks } from "./units.ts";

/** What a column's cells are read by, once the column as a whole has been looked at. */
export interface CellContext {
  asOf: Day;
  /** null where the column's day/month order is not settled. */
  order: DateOrder | null;
  mark: DecimalMark;
  /** False where no number of the column proves its mark. */
  proven?: boolean;
  /** The unit that the header names ("h" in "Runtime (h)"), for cells that name none. */
  headerUnit: string;
  /** Where the column tells how things stand, of which only some words are meant: by their status, or a test's result. */
  standing?: "status" | "result";
}

/** A quantity that was counted in boxes, and loose units beside them: units once the item's box size is known. */
export class Boxes {
  constructor(
    readonly count: number,
    readonly loose = 0,
  ) {}

  /** The whole units of them, in boxes of a size: a third of a box of 3, written as 0.333, is one. */
  ofSize(size: number): number {
    return Math.floor(this.count * size + this.loose + 0.01);
  }
}

/** The days 1990-01-01 and 2100-12-31: a fleet's dates lie between them. */
const DATES = { from: 7305, to: 47_846 } as const;

/** True for a day outside the years that a fleet's dates may lie in. */
export function isOutOfYears(day: Day | null): boolean {
  return day !== null && (day < DATES.from || day > DATES.to);
}

const ERROR_CELL = /^#(REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|N\/A|SPILL!|CALC!|N\/V|WERT!|BEZUG!|NV)/;

/** A long number as a spreadsheet shows it once it took it for a quantity. */
const MANGLED = /^\d([.,]\d+)?E\+\d{2,3}$/i;
const NAMES_ONE: ReadonlySet<string> = new Set(["serial", "lot", "device", "gtin", "item", "order"]);
/** What stands where a name belongs, and only says where to look for it: "see note". */
const ELSEWHERE = /^(see|siehe|voir|ver|zie) \D+$/i;

/** Reads a cell's text (never empty) as the column's type: a value, or the problem with it. */
export function readCell(text: string, spec: ColumnSpec, context: CellContext): unknown {
  if (text.charCodeAt(0) === 35 && ERROR_CELL.test(text)) return new Problem("error-cell", "is a spreadsheet's error");
  if (context.standing) return readStanding(text, spec, context);
  if (spec.name === "held" && readYesNo(text) === false) return null;
  // "ausgemustert" in the place of a place, unlike "Scrap Yard"
  if (spec.tellsGone && !/ \p{Lu}/u.test(text) && standingOf(text) === "gone") return goneSince(text, context.order);
  if (spec.type === "text") {
    if (!NAMES_ONE.has(spec.name)) return text;
    if (ELSEWHERE.test(text)) return null;
    return MANGLED.test(text) ? new Problem("serial-mangled", "is a rounded number and no longer the serial") : text;
  }
  if (spec.type === "list") return readList(text);
  if (spec.type === "breaks") return readBreaks(text, context.mark);
  if (text.length > MAX_TYPED_CHARACTERS) return new Problem(unreadable(spec), `is far too long for ${spec.expects}`);
  switch (spec.type) {
    case "date": {
      const day = readDate(text, spec, context);
      // "yes" and "scrapped" say that it is, though not since when
      if (spec.name !== "retired" || !(day instanceof Problem)) return day;
      const retired = standingOf(text) === "gone" || readYesNo(text);
      return retired === true ? goneSince(text, context.order) : retired === false ? null : day;
    }
    case "yes-no":
      return readYesNo(text);
    case "choice":
      if (spec.name === "price_per" && (isBoxWord(text.toLowerCase()) || packIn(text) !== null || Number(text) > 1))
        return "box";
      return readChoice(text, spec);
    case "money":
      return readMoney(text, context.mark, context.proven);
    default:
      return readMeasure(text, spec, context);
  }
}

/** What a status says for a column: that the thing is gone, or the words by which it may not be used. */
function readStanding(
  text: string,
  spec: ColumnSpec,
  { order, standing: by }: CellContext,
): Gone | string | null | Problem {
  const isShort = text.length <= MAX_TYPED_CHARACTERS;
  const standing = !isShort ? null : ((by === "result" ? standingByResult(text) : null) ?? standingOf(text));
  if (standing === null) return new Problem("status-unknown", "does not tell whether the thing serves");
  if (standing === "gone") return goneSince(text, order);
  return standing === "held" && spec.name === "held" ? text : null;
}

/** What a word for a test's result says of what was tested. */
function standingByResult(text: string): "held" | "serves" | null {
  const result = resultOf(text);
  return result === null ? null : result === "fail" ? "held" : "serves";
}

function unreadable(spec: ColumnSpec): Problem["code"] {
  return spec.type === "date"
    ? "date-unreadable"
    : spec.type === "choice" || spec.type === "yes-no"
      ? "word-unknown"
      : "number-unreadable";
}

function readDate(text: string, spec: ColumnSpec, { asOf, order, headerUnit }: CellContext): Day | Problem {
  const written = readDateText(/ww/.test(headerUnit) ? weekAsSaid(text, headerUnit) : text);
  if (written === null) return new Problem("date-unreadable", "is no date");
  // what began in a year began on its first day, or less long ago than is reckoned with
  const began = written.kind === "bad" && spec.month === "first" ? dayFromParts(written.year ?? 0, 1, 1) : null;
  if (written.kind === "bad" && began === null) return new Problem("date-impossible", `is no date: ${written.because}`);
  let day: Day | null;
  if (written.kind === "bad") {
    day = began as Day;
  } else if (written.kind === "ordered") {
    if (order === null) return new Problem("date-order-unsettled", "has no settled day/month order");
    day = written.days[order];
    if (day === null) return new Problem("date-impossible", `is no date in the order ${order} of its column`);
  } else if (written.first === written.last || spec.month === "last") {
    day = written.last;
  } else if (spec.month === "first") {
    day = written.first;
  } else {
    day = written.first <= asOf ? Math.min(written.last, asOf) : written.last;
  }
  if (isOutOfYears(day)) {
    return new Problem("date-out-of-range", `means ${isoFromDay(day)}, outside 1990 to 2100`);
  }
  if (spec.notAfterAsOf && day > asOf) {
    return new Problem("date-after-as-of", `means ${isoFromDay(day)}, after the as-of date ${isoFromDay(asOf)}`);
  }
  return day;
}

function readMeasure(
  text: string,
  spec: ColumnSpec,
  { mark, headerUnit }: CellContext,
): number | Boxes | NothingLeft | Problem {
  const known =
    spec.unit === "min"
      ? wordFor(readClock(text, headerUnit), "min")
      : spec.unit === "units"
        ? wordFor(unitsInPacks(text), "")
        : spec.unit === "per year"
          ? wordFor(timesAYear(SEVERAL.test(headerUnit) ? `${text} ${headerUnit}` : text), "/year")
          : null;
  const written = known ?? readNumber(bare(text, spec), mark);
  if (written === null) {
    // a word for a failed test where its number is looked for
    if (spec.failsBelow && resultOf(text) === "fail") return new NothingLeft(null);
    const times = spec.unit === "per year" ? unitFactor(text.toLowerCase(), "per year") : null;
    return times ?? new Problem("number-unreadable", "is no number");
  }
  const { word } = written;
  if (spec.unit === "units" && isBoxWord(word === "" ? headerUnit : word) && spec.name !== "units_per_box")
    return boxes(written.value);
  const converted =
    spec.type === "percent" || spec.type === "share" ? share(written, spec) : inUnit(written, spec, headerUnit);
  if (converted instanceof Problem) return converted;
  const value = rounded(Number(converted.toPrecision(12)), spec);
  if (spec.failsBelow && value >= 0 && value < spec.min) return new NothingLeft(value);
  if (value < spec.min || value > spec.max) return outOfBounds();
  if (spec.type === "whole" && !Number.isInteger(value)) return new Problem("number-not-whole", "is no whole number");
  return value;
}

function rounded(value: number, { rounds }: ColumnSpec): number {
  if (rounds === null) return value;
  return rounds === "up" ? Math.ceil(value) : Math.floor(value);
}

function share({ value, word }: WrittenNumber, spec: ColumnSpec): number | Problem {
  if (word !== "" && !/^(%|percent|pct|prozent|pour cent)( soh)?$/.test(word)) {
    return new Problem("unit-unknown", `has the unit "${word}", which is no share`);
  }
  return spec.type === "percent" ? percentOf(value, word) : word === "" && value <= 1 ? value : value / 100;
}

function inUnit({ value, word }: WrittenNumber, spec: ColumnSpec, headerUnit: string): number | Problem {
  const unit = word === "" ? headerUnit : word;
  if (spec.unit === "°C" && /^(°|deg)?\s?f(ahrenheit)?$/.test(unit)) return ((value - 32) * 5) / 9;
  const factor = unitFactor(unit, spec.unit);
  if (factor !== null) return value * factor;
  return word === "" ? value : new Problem("unit-unknown", `has the unit "${word}", which is not known here`);
}

function wordFor(value: number | null, word: string): WrittenNumber | null {
  return value === null ? null : { value, word };
}

/** Units of "Frequency (months)", below which stands after how many a task comes again, and not how often in one. */
const SEVERAL =
  /^(days|weeks|wks|months|mos|mths|years|yrs|tage|wochen|monate|jahre|jours|semaines|dias|semanas|meses)$/;
const RANGE_STARTS = /^\d{1,3}\s*(?:-|–|to|bis|à|a|tot)\s*(?=\d)/i;
const ONE_NUMBER = /^\D*?(\d+)\D*$/;

/** A number without what people write about it: of a lead time "2-3 weeks" the longer, of a pack size "par 10" the count. */
function bare(text: string, { name }: ColumnSpec): string {
  // what comes earlier than was reckoned with does no harm
  if (name === "lead_days") return text.replace(RANGE_STARTS, "");
  return name === "units_per_box" ? text.replace(ONE_NUMBER, "$1") : text;
}

function boxes(count: number): Boxes | Problem {
  return count >= 0 && count <= 1e6 ? new Boxes(count) : outOfBounds();
}

/** 0.87 without a sign is a share, since no capacity under 1.3 % is possible; 87 and "87 %" are percent. */
function percentOf(value: number, word: string): number {
  return word === "" && value > 0 && value <= 1.3 ? value * 100 : value;
}

/** A week that the heading says is written as year and week, or as week and year, as ISO 8601 writes it. */
function weekAsSaid(text: string, headerUnit: string): string {
  return text.trim().replace(/^(\d\d)\D?(\d\d)$/, /^ww/.test(headerUnit) ? "20$2-W$1" : "20$1-W$2");
}

/** Minutes of a runtime written as 1:12, 1:12:30 or 1 h 12 min; null where it is none. */
function readClock(text: string, headerUnit: string): number | null {
  const m =
    /^(\d{1,3}):([0-5]\d)(?::([0-5]\d))?(?:\s*h)?$/.exec(text) ??
    /^(\d{1,3})\s*h(?:ours?|rs?)?\s*([0-5]?\d)\s*(?:m|min|mins|minutes)?$/i.exec(text);
  if (!m) return null;
  const inMinutes = Number(m[1]) * 60 + Number(m[2]) + Number(m[3] ?? 0) / 60;
  // below "(mm:ss)" the first are minutes
  return /^[^h]*ss$/.test(headerUnit) ? inMinutes / 60 : inMinutes;
}

/** How many distinct texts a column remembers; beyond it cells are read anew, so memory stays bounded. */
const MEMO_LIMIT = 20_000;
/** After so many cells a column of names is remembered no more unless half of them had stood there before: serials. */
const NAMES_TO_JUDGE_BY = 1000;

/** A column's reader: null for an empty cell, else a value or a problem; remembers what it has read. */
export function columnReader(
  spec: ColumnSpec,
  context: CellContext,
): (cell: string | number | boolean | null) => unknown {
  const known = new Map<string | number | boolean, unknown>();
  let remembers = true;
  let asked = 0;
  const isText = spec.type === "text";
  const numberContext = { ...context, mark: "." as const, proven: true };
  return (cell) => {
    if (cell === null || cell === "") return null;
    if (remembers) {
      asked++;
      const found = known.get(cell);
      if (found !== undefined) return found;
    }
    const text = cellText(cell);
    const value = meansEmpty(text) ? null : readCell(text, spec, typeof cell === "number" ? numberContext : context);
    if (remembers && known.size < MEMO_LIMIT) known.set(cell, value);
    if (isText && remembers && known.size * 2 > asked && asked >= NAMES_TO_JUDGE_BY) remembers = false;
    return value;
  };
}
