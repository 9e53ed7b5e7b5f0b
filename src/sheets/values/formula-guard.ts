/**
 * Where a spreadsheet may take text for the start of a formula: at the start of a cell, and after what it may take for
 * the end of one (a semicolon where that parts cells, a line break), the wide forms of the signs included.
 */
const FORMULA_START = /(^|[;\t\r\n]\s*)('*[=+\-@\uff1d\uff0b\uff0d\uff20])/g;
const GUARDED_START = /(^|[;\t\r\n]\s*)'('*[=+\-@\uff1d\uff0b\uff0d\uff20])/g;
/** A negative number as a text file holds it: a value, no formula. */
const NEGATIVE_NUMBER = /^-\d+(\.\d+)?$/;

/** Text with an apostrophe wherever a spreadsheet could take it for a formula; `unguardText` takes them away again. */
export function guardText(text: string): string {
  if (NEGATIVE_NUMBER.test(text)) return text;
  const guarded = text.replace(FORMULA_START, "$1'$2");
  return /^[\t\r]/.test(guarded) ? `'${guarded}` : guarded;
}

/** Text of a cell without one apostrophe before every formula sign. */
export function unguardText(text: string): string {
  return text.includes("'") ? text.replace(GUARDED_START, "$1$2") : text;
}
