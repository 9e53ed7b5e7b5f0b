import { parseHeader } from "../words/parse-header.ts";
import { rowThing } from "../words/row-thing.ts";
import { cellText } from "./cell-text.ts";
import { isDate } from "./date-text.ts";
import { EXPIRES } from "./says-expiry.ts";
import { isBoxWord, isUnitWord, unitFactor } from "./units.ts";

/** What a cell that lists supplies says of each: what it is, how many, when it expires, of which lot. */
export type ListedPart = "listed item" | "listed count" | "listed expiry" | "listed lot";

/** What one of a cell's parts says; empty where it says nothing of it. */
type Listed = Record<ListedPart, string> & {
  /** What is left of its words. */
  rest: string;
  /** How many dates stand in it: of several none is meant for sure. */
  dates: number;
};

/** The longest cell that is looked at. */
const LONGEST = 600;

/** Dates inside a text: numbers parted by signs, or a month's name with numbers around it. A set of ten ("set 10") is no September. */
const DATE =
  /(?<![\w/.-])(?:\d{4}[-/.]\d{1,2}(?:[-/.]\d{1,2})?|\d{1,2}[-/.]\d{1,2}[-/.](?:\d{4}|\d{2})|\d{1,2}[-/](?:\d{4}|\d{2})|\d{1,2}\.\d{4}|(?!set \d\d\b)(?:\d{1,2}[ .-]{1,2})?\p{L}{3,9}\.?[ -]'?(?:\d{1,2}, ?)?(?:\d{4}|\d{2}))(?![\w/-])/giu;
/** Words around an expiry. */
const SAYS_EXPIRY = new RegExp(`(?<!\\p{L})(?:${EXPIRES})(?!\\p{L})[.:]*`, "giu");
const LOT =
  /(?<!\p{L})(?:lote?|lotto|batch|charge|ch\.(?:-b\.?)?|partij?)(?!\p{L})[\s.:#]*(?:no\.?|nr\.?)?\s*([\w-]*\d[\w-]*)/iu;
/** The number of a lot in brackets that held a date besides, which is no count: "(L1, )". */
const BRACKETED = /\(\s*(?!x?\d{1,3}\p{L}*\b)([\w-]*\d[\w-]*)[\s,;:/-]*\)/iu;
const COUNT_FIRST = /^(\d{1,4})\s*(?:[x×*]\s*)?(?:(\p{L}+\.?)\s+(?:of\s+)?(?=[\p{L}(]))?(?=[\s\p{L}(])/iu;
const COUNT_LAST = /(?:[x×*:=-]\s*|\s|\()(\d{1,4})\s*(?:[x×*]|(\p{L}+\.?))?\)?$/iu;
/** Words that count units in a column of numbers, and name the thing in a list. */
const THING = /^(pad|sensor)s?$/;
const EDGES = /^[\s/|,;:.()[\]–-]+|[\s/|,;:([\]–-]+$/g;

/**
 * The parts of a cell that lists supplies: "2 x adult pads exp 03/2027; 1 roll paper" has two.
 *
 * @param pads  the word for pads in the column's header, which its cells then leave out ("2 x adult 03/27"); empty where none
 */
export function listedIn(cell: unknown, pads = ""): string[] {
  const parts = partsIn(cell);
  return pads === "" ? parts : parts.map((part) => withPads(part, pads));
}

/** A part that says of pads only for whom they are, with their name. */
function withPads(part: string, pads: string): string {
  const { "listed item": item } = partsOf(part);
  const { variant, things, says } = parseHeader(item);
  if (!/^(adult|child)$/.test(variant) || things !== "" || says !== "") return part;
  return part.replace(item, `${item} ${pads}`);
}

function partsIn(cell: unknown): string[] {
  const text = typeof cell === "string" ? cellText(cell) : "";
  if (text === "" || text.length > LONGEST) return [];
  const parts: string[] = [];
  for (const part of piecesOf(text)) {
    const { "listed item": item, "listed count": count } = partsOf(part);
    const before = parts.length - 1;
    if (item !== "" || before === -1) parts.push(part);
    // "exp 03/2027" goes with what stands before it, and "1 x 05/2027" is more of it
    else if (count === "" || partsOf(parts[before] as string).dates === 0) parts[before] += `, ${part}`;
    else parts.push(`${part} ${partsOf(parts[before] as string)["listed item"]}`);
  }
  return parts;
}

/** Pieces between semicolons, line ends, bullets, and commas that part no number or bracket. */
function piecesOf(text: string): string[] {
  const pieces: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at <= text.length; at++) {
    const sign = text[at];
    if (sign === "(") depth++;
    else if (sign === ")") depth = Math.max(0, depth - 1);
    const parts =
      sign === undefined ||
      /[;\n|•]/.test(sign) ||
      (depth === 0 &&
        (sign === "+" ||
          (sign === "/" && text[at - 1] === " " && text[at + 1] === " ") ||
          (sign === "," && !/^,\s?\d{4}\b|^,\d/.test(text.slice(at)))));
    if (!parts) continue;
    const piece = text.slice(from, at).replace(EDGES, "");
    if (piece !== "") pieces.push(piece);
    from = at + 1;
    depth = 0;
  }
  return pieces;
}

const known = new Map<string, Listed>();

function partsOf(text: string): Listed {
  let listed = known.get(text);
  if (listed === undefined) {
    listed = takeApart(text.length > LONGEST ? "" : text);
    if (known.size > 10_000) known.clear();
    known.set(text, listed);
  }
  return listed;
}

function takeApart(text: string): Listed {
  const dates = datesIn(text);
  let rest = dates.reduce((left, date) => left.replace(date, " "), text).replace(SAYS_EXPIRY, " ");
  const lot = LOT.exec(rest) ?? (dates.length > 0 ? BRACKETED.exec(rest) : null);
  if (lot) rest = rest.replace(lot[0], " ");
  rest = rest
    .replace(/\([\s,;:/-]*\)/g, " ")
    .replace(/\s+/g, " ")
    .replace(EDGES, "");
  const first = COUNT_FIRST.exec(rest);
  const last = first ? null : COUNT_LAST.exec(` ${rest}`);
  const word = ((first ?? last)?.[2] ?? "").toLowerCase();
  const isUnit = isBoxWord(word) || (word !== "" && !THING.test(word) && unitFactor(word, "units") !== null);
  let count = "";
  if (first) {
    count = first[1] as string;
    rest = rest.replace(isUnit ? first[0] : /^\d+\s*(?:[x×*](?!\p{L}))?/iu, "");
  } else if (last && (word === "" || isUnit)) {
    count = last[1] as string;
    rest = ` ${rest}`.slice(0, last.index);
  }
  const item = rest.replace(EDGES, "");
  return {
    rest: item,
    "listed item": /\p{L}{2}/u.test(item) ? item : "",
    "listed count": count !== "" && isBoxWord(word) ? `${count} ${word}` : count,
    "listed expiry": dates.length === 1 ? (dates[0] as string) : "",
    "listed lot": lot?.[1] ?? "",
    dates: dates.length,
  };
}

function datesIn(text: string): string[] {
  const dates: string[] = [];
  const date = new RegExp(DATE);
  for (let found = date.exec(text); found; found = date.exec(text)) {
    if (isDate(found[0])) dates.push(found[0]);
    // a word before a date is not its month: the date may start behind it
    else date.lastIndex = found.index + 1;
  }
  return dates;
}

/** What a part of such a cell says; null where it says nothing of it. What is not counted stands there once. */
export function listedPart(text: string, part: ListedPart): string | null {
  const said = partsOf(text)[part];
  return said !== "" ? said : part === "listed count" ? "1" : null;
}

/** How many dates stand in a part of such a cell. */
export function listedDates(text: string): number {
  return partsOf(text).dates;
}

/** What parts the pieces of a cell that name a lot and its date each. */
const BETWEEN_PIECES = /\s*[;,&+\n]\s*/;
/** What parts the lots of a cell, or its dates. */
export const BETWEEN_SEVERAL = /\s*[;,&+\n]\s*|\s+(?:\/|and|und|et|y)\s+/;

/**
 * The dates of a cell that holds several, or one with how many there are of it: "05/2027, 11/2027", "06/2028 (2 sets)"; none of others.
 *
 * @param parted  the cell may name lots beside them, which stay with their dates: "L101 (6) 3/27, L102 (8) 9/27"
 */
export function datesWithCounts(text: string, parted: boolean): { date: string; count: number | null }[] {
  if (isDate(text)) return [];
  const pieces = text.split(parted ? BETWEEN_PIECES : BETWEEN_SEVERAL);
  const lots = pieces.flatMap((piece) => {
    const { dates, "listed expiry": date, "listed count": count, "listed lot": named, rest } = partsOf(piece);
    const lot = named + (isUnitWord(rest.replace(")", "").toLowerCase()) ? "" : rest);
    if (dates !== 1 || !(lot === "" || (parted && /^\S*\d\S*$/.test(lot)))) return [];
    return { date: !parted ? date : lot === "" ? piece : `${lot} ${date}`, count: Number(count) || null };
  });
  return lots.length === pieces.length && (lots.length > 1 || lots[0]?.count) ? lots : [];
}

/** True for a cell most of whose parts name supplies and count or date them. */
export function listsSupplies(cell: unknown, pads = ""): boolean {
  const parts = listedIn(cell, pads);
  const supplies = parts.filter((part) => {
    const { "listed item": item, "listed count": count, dates } = partsOf(part);
    const thing = rowThing(item);
    return (thing === "supply" || thing === "battery") && (count !== "" || dates > 0);
  });
  return supplies.length > 0 && supplies.length * 2 >= parts.length;
}

/** True where such a cell could not be the name of one thing: it lists several, or dates what it names. */
export function listsSeveral(cell: unknown): boolean {
  const parts = listedIn(cell);
  return parts.length > 1 || parts.some((part) => partsOf(part).dates > 0);
}
