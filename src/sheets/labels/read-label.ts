import type { Day } from "../../calendar/day.ts";
import { isOutOfYears } from "../values/read-cell.ts";
import { gs1CheckDigit, looksLikeGs1, readGs1 } from "./gs1.ts";
import { looksLikeHibc, readHibc } from "./hibc.ts";
import { BadLabel, blankLabel, type Label } from "./label.ts";

/** Longest scan that can be a label: the largest symbol holds fewer characters. */
const MAX_SCAN = 500;

/** True where text has a label's form, whether or not it can be trusted. */
export function looksLikeLabel(scan: string): boolean {
  const text = scan.trim();
  return looksLikeHibc(text) || looksLikeGs1(text);
}

/** Reads a scanned label, GS1 or HIBC, or a bare GTIN; why it cannot be trusted where it is wrong or neither. */
export function readLabel(scan: string, asOf: Day): Label | BadLabel {
  const text = scan.trim();
  if (text.length > MAX_SCAN) return new BadLabel("is too long");
  const label = readText(text, asOf);
  if (label instanceof BadLabel || ![label.expiry, label.made].some(isOutOfYears)) return label;
  return new BadLabel("gives a date outside 1990 to 2100");
}

function readText(text: string, asOf: Day): Label | BadLabel {
  if (looksLikeHibc(text)) return readHibc(text, asOf);
  if (looksLikeGs1(text)) return readGs1(text, asOf);
  // the number that every unit of a product bears in trade
  if (/^(\d{8}|\d{12,14})$/.test(text) && gs1CheckDigit(text.slice(0, -1)) === Number(text.at(-1)))
    return { ...blankLabel(), product: text.padStart(14, "0") };
  const plain = /^\](C0|d1|Q1|E0|E4|A0)/.test(text);
  return new BadLabel(plain ? "is a plain symbol, neither GS1 nor HIBC" : "is neither GS1 nor HIBC");
}
