/** A number as written: its value and the word after or before it. */
export interface WrittenNumber {
  value: number;
  /** Unit, currency or counting word, lower case; empty where none. */
  word: string;
}

/** A grouped or plain number, or about as many, with an optional sign and exponent, and words around it. All parts are linear. */
const NUMBER =
  /^(?:(?:~|≈|(?:ca?|circa|approx|about|env|etwa|aprox)\b\.?) ?)?([^\d.,+-]{0,12})([+-]?)(\d[\d.,'’  \u202f]*|[.,]\d+)(e[+-]?\d{1,3})?([^\d]{0,24})$/i;

/** How a column writes its numbers. */
export type DecimalMark = "." | ",";

/** What one written number proves about the column's decimal mark; null where it proves nothing. */
export function decimalMarkProof(text: string): DecimalMark | null {
  const digits = NUMBER.exec(text)?.[3]?.trim();
  if (digits === undefined) return null;
  const comma = digits.lastIndexOf(",");
  const point = digits.lastIndexOf(".");
  if (comma === -1 && point === -1) return null;
  if (comma !== -1 && point !== -1) return comma > point ? "," : ".";
  const mark = comma === -1 ? "." : ",";
  const parts = digits.split(mark);
  const grouped = parts.slice(1).every((part) => /^\d{3}$/.test(part)) && /^[1-9]\d{0,2}$/.test(parts[0] as string);
  if (grouped) return parts.length > 2 ? (mark === "." ? "," : ".") : null;
  return parts.length === 2 ? mark : null;
}

/**
 * Reads a number with thousands marks, a decimal mark, a sign and a unit word.
 *
 * @param mark  the column's decimal mark; the other one, blanks and apostrophes group thousands
 * @returns null where the text is no number
 */
export function readNumber(text: string, mark: DecimalMark): WrittenNumber | null {
  // digits may be of full width, as Chinese and Japanese keyboards write them
  const match = NUMBER.exec(text) ?? NUMBER.exec(text.normalize("NFKC"));
  if (!match) return null;
  const [, before, sign, digits, exponent, after] = match as unknown as [
    string,
    string,
    string,
    string,
    string?,
    string?,
  ];
  const plain = plainDigits(digits.trim(), mark);
  if (plain === null) return null;
  const minus = sign === "-" || /[-−]\s*$/.test(before);
  const value = Number(`${plain}${exponent ?? ""}`) * (minus ? -1 : 1);
  if (!Number.isFinite(value)) return null;
  const word = `${before.replace(/[-−]\s*$/, "").trim()} ${(after ?? "").trim()}`.trim().toLowerCase();
  return { value, word };
}

function plainDigits(digits: string, mark: DecimalMark): string | null {
  const other = mark === "." ? "," : ".";
  const at = digits.lastIndexOf(mark);
  if (at !== -1 && digits.indexOf(mark) !== at) {
    // The mark stands several times: it can only group thousands.
    return groups(digits, mark) && !digits.includes(other) ? digits.replaceAll(mark, "") : null;
  }
  const whole = at === -1 ? digits : digits.slice(0, at);
  const fraction = at === -1 ? "" : digits.slice(at + 1);
  if (!/^\d*$/.test(fraction)) return null;
  const grouping = /[.,'’\s]/.exec(whole)?.[0];
  if (grouping !== undefined && !groups(whole, grouping)) {
    // 12,5 in a column of points: the only mark there is must be the decimal one.
    return at === -1 && /^\d+[.,]\d+$/.test(whole) ? whole.replace(other, ".") : null;
  }
  return `${whole.replace(/[.,'’\s]/g, "") || "0"}.${fraction || "0"}`;
}

/** True where the digits stand in groups of three parted by the mark. */
function groups(digits: string, mark: string): boolean {
  const parts = digits.split(mark);
  return /^\d{1,3}$/.test(parts[0] as string) && parts.slice(1).every((part) => /^\d{3}$/.test(part));
}
