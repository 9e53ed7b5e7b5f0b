// Code points that take two columns in a terminal: the wide blocks of Unicode Standard Annex 11, coarsely.
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}]/u;
const COMBINING = /\p{Mark}/u;

const PLAIN = /^[ -~]*$/;

/** Columns that a text takes in a terminal. */
export function textWidth(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let width = 0;
  for (const point of text) width += COMBINING.test(point) ? 0 : WIDE.test(point) ? 2 : 1;
  return width;
}

/** A text of at most so many columns; what does not fit gives way to an ellipsis. */
export function clipText(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  let clipped = "";
  let used = 1;
  for (const point of text) {
    used += textWidth(point);
    if (used > width) break;
    clipped += point;
  }
  return `${clipped.trimEnd()}\u2026`;
}

/** Sheet text made safe for a terminal: characters that move the cursor or turn the direction of text become blanks. */
export function plainText(text: string): string {
  return text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]+/gu, " ");
}

/** Columns of a name beyond which it is clipped: none is so long, but a cell may hold a million characters. */
export const LONGEST_NAME = 200;

/** What no line breaks: words, a number with its percent sign. */
export function wordsOf(text: string): string[] {
  return text.split(/ (?!%)/);
}

/** Words set in lines of at most `width` columns; later lines start with `indent`. A longer word has its own line. */
export function wrapText(text: string, width: number, indent = ""): string {
  const lines: string[] = [];
  let line = "";
  for (const whole of wordsOf(plainText(text))) {
    const word = clipText(whole, LONGEST_NAME);
    if (line !== "" && textWidth(line) + 1 + textWidth(word) > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line].join("\n");
}
