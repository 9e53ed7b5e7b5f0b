import { type Day, dayFromParts } from "../../calendar/day.ts";
import { BadLabel, blankLabel, type Label } from "./label.ts";
import { dayOfYear, labelDay, labelYear, monthEdge } from "./label-date.ts";

/** The characters of a HIBC in the order of their values. */
const ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%";

/** The mark of a plain symbol. */
const SYMBOL = /^\][A-Za-z]\d/;

/** True where text may be a HIBC: a plus sign, with or without asterisks and a mark of a plain symbol. */
export function looksLikeHibc(text: string): boolean {
  return /^\*?\+[A-Z0-9$/]/.test(text.replace(SYMBOL, ""));
}

/**
 * The check character of a HIBC: the sum of the characters' values modulo 43.
 *
 * @returns null where a character is not of the alphabet
 * @see ANSI/HIBC 2.6 (Health Industry Business Communications Council), Appendix B
 */
export function hibcCheckCharacter(data: string): string | null {
  let sum = 0;
  for (const character of data) {
    const value = ALPHABET.indexOf(character);
    if (value === -1) return null;
    sum += value;
  }
  return ALPHABET[sum % 43] as string;
}

/** A scan without blanks around it; a blank that is a HIBC's check character becomes the underscore that is printed for it. */
export function scanAsPrinted(scan: string): string {
  const text = scan.trim();
  const isCheck = scan.endsWith(" ") && looksLikeHibc(text) && hibcCheckCharacter(text.replace(SYMBOL, "")) === " ";
  return isCheck ? `${text}_` : text;
}

/** Reads a HIBC supplier label: primary, secondary, or both with supplements. */
export function readHibc(scan: string, asOf: Day): Label | BadLabel {
  const text = scan.replace(SYMBOL, "").replace(/^\*|\*$/g, "");
  const data = text.slice(0, -1);
  const check = text.at(-1) === "_" ? " " : text.at(-1);
  const expected = hibcCheckCharacter(data);
  if (expected === null) return new BadLabel("has a character that no such label can hold");
  if (expected !== check) return new BadLabel("has a wrong check character");
  const label = blankLabel();
  const segments = data.slice(1).split("/");
  const [first, ...others] = segments as [string, ...string[]];
  if (/^[A-Z][A-Z0-9]{4,21}\d$/.test(first)) label.product = first.slice(0, -1);
  else {
    // A secondary label alone ends with the check character of its primary one, which links the two.
    const problem = readSecondary(first.slice(0, -1), label, asOf);
    if (problem) return problem;
  }
  for (const segment of others) {
    const problem = readSupplement(segment, label, asOf);
    if (problem) return problem;
  }
  return label;
}

function readSupplement(segment: string, label: Label, asOf: Day): BadLabel | null {
  const dated = /^(14|16)D(\d{4})(\d{2})(\d{2})$/.exec(segment);
  if (dated) {
    const day = dayFromParts(Number(dated[2]), Number(dated[3]), Number(dated[4]));
    if (day === null) return new BadLabel("gives a date that the calendar does not have");
    if (dated[1] === "14") label.expiry = day;
    else label.made = day;
    return null;
  }
  if (/^S./.test(segment)) label.serial = segment.slice(1);
  else if (/^Q\d{1,9}$/.test(segment)) label.quantity = Number(segment.slice(1));
  else return readSecondary(segment, label, asOf);
  return null;
}

/** Lot or serial with quantity and expiry, in the forms that start with a digit, $ or $$. */
function readSecondary(text: string, label: Label, asOf: Day): BadLabel | null {
  const start = /^(\$\$\+|\$\$|\$\+|\$|)(.*)$/.exec(text) as RegExpExecArray;
  const mark = start[1] as string;
  let rest = start[2] as string;
  const field = mark.endsWith("+") ? "serial" : "lot";
  if (mark === "") {
    if (!/^\d{5}/.test(rest)) return new BadLabel("has a part that is not known");
    label.expiry = yearAndDay(rest.slice(0, 5), asOf);
    rest = rest.slice(5);
    if (label.expiry === null) return noSuchDay();
  } else if (mark.startsWith("$$")) {
    const counted = /^(?:8(\d{2})|9(\d{5}))(.*)$/.exec(rest);
    if (counted) {
      label.quantity = Number(counted[1] ?? counted[2]);
      rest = counted[3] as string;
    }
    const dated = expiryIn(rest, asOf);
    if (dated === null) return noSuchDay();
    label.expiry = dated.day;
    rest = rest.slice(dated.length);
  }
  if (rest !== "") label[field] = rest;
  return null;
}

function noSuchDay(): BadLabel {
  return new BadLabel("gives a use-by date that the calendar does not have");
}

function yearAndDay(text: string, asOf: Day): Day | null {
  return /^\d{5}$/.test(text) ? dayOfYear(labelYear(Number(text.slice(0, 2)), asOf), Number(text.slice(2))) : null;
}

/** The use-by date at the start of a secondary label by its format digit, and how many characters it takes. */
function expiryIn(text: string, asOf: Day): { day: Day | null; length: number } | null {
  const at = (from: number, to: number) => text.slice(from, to);
  const found = (day: Day | null, length: number) => (day === null ? null : { day, length });
  switch (text[0]) {
    case "0":
    case "1":
      return /^\d{4}/.test(text)
        ? found(monthEdge(labelYear(Number(at(2, 4)), asOf), Number(at(0, 2)), "last"), 4)
        : null;
    case "2":
      return found(labelDay(at(5, 7) + at(1, 5), asOf, "last"), 7);
    case "3":
      return found(labelDay(at(1, 7), asOf, "last"), 7);
    case "4":
      return /^4\d{8}/.test(text) ? found(labelDay(at(1, 7), asOf, "last"), 9) : null;
    case "5":
      return found(yearAndDay(at(1, 6), asOf), 6);
    case "6":
      return /^6\d{7}/.test(text) ? found(yearAndDay(at(1, 6), asOf), 8) : null;
    case "7":
      return { day: null, length: 1 };
    default:
      return { day: null, length: 0 };
  }
}
