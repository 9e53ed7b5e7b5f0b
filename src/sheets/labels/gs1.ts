import type { Day } from "../../calendar/day.ts";
import { BadLabel, blankLabel, type Label } from "./label.ts";
import { labelDay } from "./label-date.ts";

/** How long the value of an application identifier is: exactly `fixed`, or up to `most` characters. */
interface AiFormat {
  fixed?: number;
  most?: number;
  digits: boolean;
}

const fixed = (length: number): AiFormat => ({ fixed: length, digits: true });
const upTo = (most: number, digits = false): AiFormat => ({ most, digits });

/**
 * Formats of the identifiers that stand on unit and case labels.
 *
 * @see GS1 General Specifications, section 3 (element strings by application identifier)
 */
function formatOf(text: string): { ai: string; format: AiFormat } | null {
  const two = text.slice(0, 2);
  const three = text.slice(0, 3);
  const four = text.slice(0, 4);
  if (/^(11|12|13|15|16|17)/.test(two)) return { ai: two, format: fixed(6) };
  const byTwo: Record<string, AiFormat> = {
    "00": fixed(18),
    "01": fixed(14),
    "02": fixed(14),
    "10": upTo(20),
    "20": fixed(2),
    "21": upTo(20),
    "22": upTo(20),
    "30": upTo(8, true),
    "37": upTo(8, true),
  };
  if (byTwo[two]) return { ai: two, format: byTwo[two] };
  if (/^(240|241|250|251|400)$/.test(three)) return { ai: three, format: upTo(30) };
  if (/^(243|254|403|71[0-6]|420)$/.test(three)) return { ai: three, format: upTo(20) };
  if (three === "235") return { ai: three, format: upTo(28) };
  if (three === "242") return { ai: three, format: upTo(6, true) };
  if (/^41[0-7]$/.test(three)) return { ai: three, format: fixed(13) };
  if (/^(422|424|425|426)$/.test(three)) return { ai: three, format: fixed(3) };
  if (/^3[1-6]\d\d$/.test(four)) return { ai: four, format: fixed(6) };
  if (four === "7003") return { ai: four, format: fixed(10) };
  if (four === "8012") return { ai: four, format: upTo(20) };
  return /^9[0-9]/.test(two) ? { ai: two, format: upTo(two === "90" ? 30 : 90) } : null;
}

/** Separator characters as scanners and people write them; none of them can stand in a value. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the group separator is the character that is looked for.
const SEPARATORS = /<GS>|<FNC1>|\{GS\}|\{FNC1\}|\[GS\]|\[FNC1\]|\\x1d|\\u001d|[\u001d\u241d~^|]/gi;
const GS = "\u001d";
/** GS1 AI encodable character set 82. */
const VALUE = /^[!"%&'()*+,\-./0-9:;<=>?A-Z_a-z]+$/;

/** True where text may be a GS1 element string: a GS1 symbology mark, brackets, or AI 01 with its digits. */
export function looksLikeGs1(text: string): boolean {
  return (
    /^\](C1|e0|d2|Q3|J1)/.test(text) || /^\(\d{2,4}\)/.test(text) || /^0[012]\d{14}/.test(text.replace(SEPARATORS, ""))
  );
}

/**
 * Reads a GS1 element string, with or without symbology mark, with brackets or separators.
 *
 * @param asOf  decides the century of two-digit years
 */
export function readGs1(scan: string, asOf: Day): Label | BadLabel {
  const marked = scan.replace(/^\](C1|e0|d2|Q3|J1)/, "").replace(SEPARATORS, GS);
  const text = marked.startsWith(GS) ? marked.slice(1) : marked;
  const elements = /^\(\d{2,4}\)/.test(text) ? bracketed(text) : concatenated(text);
  if (elements instanceof BadLabel) return elements;
  const label = blankLabel();
  const seen = new Map<string, string>();
  for (const [ai, value] of elements) {
    const problem = checkElement(ai, value);
    if (problem !== null) return new BadLabel(problem);
    if (seen.has(ai) && seen.get(ai) !== value) return new BadLabel(`gives (${ai}) twice with different values`);
    seen.set(ai, value);
    const bad = take(label, ai, value, asOf);
    if (bad) return bad;
  }
  return label;
}

function bracketed(text: string): [string, string][] | BadLabel {
  const parts = text.split(/\((\d{2,4})\)/);
  const elements: [string, string][] = [];
  for (let i = 1; i < parts.length; i += 2)
    elements.push([parts[i] as string, (parts[i + 1] as string).replaceAll(GS, "").trim()]);
  return parts[0] === "" ? elements : new BadLabel("does not start with an identifier");
}

function concatenated(text: string): [string, string][] | BadLabel {
  const elements: [string, string][] = [];
  for (let at = 0; at < text.length; ) {
    const known = formatOf(text.slice(at, at + 4));
    if (!known) return new BadLabel(`has no known identifier at "${text.slice(at, at + 4).replaceAll(GS, "")}"`);
    at += known.ai.length;
    const separator = text.indexOf(GS, at);
    const upToSeparator = separator === -1 ? text.length : separator;
    const end = known.format.fixed === undefined ? upToSeparator : Math.min(at + known.format.fixed, text.length);
    elements.push([known.ai, text.slice(at, end)]);
    // A separator after a value of fixed length should not be there, and does no harm.
    at = text[end] === GS ? end + 1 : end;
  }
  return elements;
}

/** What is wrong with a value; null where nothing is. */
function checkElement(ai: string, value: string): string | null {
  const known = formatOf(ai);
  if (!known || known.ai !== ai) return `has the unknown identifier (${ai})`;
  const { fixed: length, most, digits } = known.format;
  if (length !== undefined && value.length !== length)
    return `gives (${ai}) ${value.length} instead of ${length} characters`;
  if (most !== undefined && (value.length === 0 || value.length > most))
    return `gives (${ai}) ${value.length} characters, where 1 to ${most} are allowed`;
  if (digits && !/^\d+$/.test(value)) return `gives (${ai}) something else than digits`;
  if (!VALUE.test(value)) return `gives (${ai}) a character that no such label can hold`;
  if ((ai === "01" || ai === "02") && gs1CheckDigit(value.slice(0, -1)) !== Number(value.at(-1)))
    return `has a wrong check digit in (${ai})`;
  return null;
}

/**
 * The check digit of a GTIN's other digits: weights 3 and 1 in turn from the right.
 *
 * @see GS1 General Specifications, section 7.9
 */
export function gs1CheckDigit(digits: string): number {
  let sum = 0;
  for (let i = 0; i < digits.length; i++) sum += Number(digits[digits.length - 1 - i]) * (i % 2 === 0 ? 3 : 1);
  return (10 - (sum % 10)) % 10;
}

function take(label: Label, ai: string, value: string, asOf: Day): BadLabel | null {
  if (ai === "01" || (ai === "02" && label.product === null)) label.product = value;
  else if (ai === "10") label.lot = value;
  else if (ai === "21") label.serial = value;
  else if (ai === "30" || ai === "37") label.quantity = Number(value);
  else if (ai === "17" || ai === "7003") {
    label.expiry = labelDay(value.slice(0, 6), asOf, "last");
    if (label.expiry === null)
      return new BadLabel(`gives the use-by date ${value.slice(0, 6)}, which the calendar does not have`);
  } else if (ai === "11") {
    label.made = labelDay(value, asOf, "first");
    if (label.made === null)
      return new BadLabel(`gives the date of manufacture ${value}, which the calendar does not have`);
  }
  return null;
}
