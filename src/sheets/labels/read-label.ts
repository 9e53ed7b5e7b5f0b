import type { Day } from "../../calendar/day.ts";
import { isOutOfYears } from "../values/read-cell.ts";
import { looksLikeGs1, readGs1 } from "./gs1.ts";
import { looksLikeHibc, readHibc } from "./hibc.ts";
import { BadLabel, type Label } from "./label.ts";

/** Longest scan that can be a label: the largest symbol holds fewer characters. */
const MAX_SCAN = 500;

/** True where text has a label's form, whether or not it can be trusted. */
export function looksLikeLabel(scan: string): boolean {
  const text = scan.trim();
  return looksLikeHibc(text) || looksLikeGs1(text);
}

/** Reads a scanned label, GS1 or HIBC; why it cannot be trusted where it is wrong or neither. */
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
  const plain = /^\](C0|d1|Q1|E0|E4|A0)/.test(text);
  return new BadLabel(plain ? "is a plain symbol, neither GS1 nor HIBC" : "is neither GS1 nor HIBC");
}
