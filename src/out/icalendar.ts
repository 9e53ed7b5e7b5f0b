/** RFC 5545 section 3.1: a content line is at most this many octets long, its line break not counted. */
const LINE_OCTETS = 75;

/**
 * A content line, folded: after at most 75 octets a line break and one space, never inside a character.
 *
 * @see RFC 5545 section 3.1
 */
export function foldedLine(line: string): string {
  const encoder = new TextEncoder();
  let folded = "";
  let octets = 0;
  for (const character of line) {
    const size = encoder.encode(character).length;
    if (octets + size > LINE_OCTETS) {
      folded += "\r\n ";
      octets = 1; // the space counts
    }
    folded += character;
    octets += size;
  }
  return `${folded}\r\n`;
}

/**
 * A TEXT value: backslash, semicolon, comma and line breaks escaped; a colon is not. Other control characters, which
 * the format forbids, become blanks.
 *
 * @see RFC 5545 section 3.3.11
 */
export function textValue(text: string): string {
  return text
    .replace(/[\\;,]/g, "\\$&")
    .replace(/\r\n|\r|\n/g, "\\n")
    .replace(/\p{Cc}/gu, " ");
}

/** A DATE value of `YYYY-MM-DD`: `YYYYMMDD`. */
export function dateValue(isoDay: string): string {
  return isoDay.replaceAll("-", "");
}
