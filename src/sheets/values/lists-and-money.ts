import type { PriceBreak } from "../../fleet/rows.ts";
import { type DecimalMark, decimalMarkProof, readNumber } from "./number-text.ts";
import { outOfBounds, Problem } from "./problem.ts";

/** Most decimals that a written price may carry. */
const MAX_PRICE_DECIMALS = 6;

/** Names parted by semicolons, or by line ends within the cell; each trimmed, empty and repeated ones dropped. */
export function readList(text: string): string[] {
  return [...new Set(text.split(/[;\n|]/).map((name) => name.trim()))].filter((name) => name !== "");
}

/**
 * An amount of money in major units as decimal text: "€ 1.234,50" is "1234.50".
 *
 * @param isSure  false where nothing but the file's habit tells the mark: then "1.250" is refused
 */
export function readMoney(text: string, mark: DecimalMark, isSure = true): string | Problem {
  const written = readNumber(text, mark);
  if (written === null) return new Problem("number-unreadable", "is no amount");
  if (!isSure && text.includes(mark) && decimalMarkProof(text) === null)
    return new Problem("number-unreadable", `may be ${written.value * 1000} or ${written.value}`);
  if (/\bk\b/.test(written.word)) written.value *= 1000;
  if (/[%°]/.test(written.word))
    return new Problem("unit-unknown", `has the unit "${written.word}", which is no money`);
  if (written.value < 0 || written.value > 1e9) return outOfBounds();
  return decimalText(written.value);
}

function decimalText(value: number): string {
  const rounded = value.toFixed(MAX_PRICE_DECIMALS).replace(/0+$/, "").replace(/\.$/, "");
  const [whole, fraction = ""] = rounded.split(".");
  return fraction === "" ? (whole as string) : `${whole}.${fraction.padEnd(2, "0")}`;
}

/** Price breaks such as `10:38.50; 50:35.00`, by rising quantity. */
export function readBreaks(text: string, mark: DecimalMark): PriceBreak[] | Problem {
  const breaks: PriceBreak[] = [];
  for (const part of text.split(/[;\n|]/)) {
    if (part.trim() === "") continue;
    const match = /^\s*(?:from|ab|>=|≥)?\s*(\d{1,9})\s*\+?\s*[:=@]\s*(.{1,24})$/.exec(part);
    const price = match ? readMoney((match[2] as string).trim(), mark) : null;
    if (!match || price === null || price instanceof Problem) {
      return new Problem("breaks-unreadable", "is no list of price breaks");
    }
    breaks.push({ from: Number(match[1]), price });
  }
  breaks.sort((a, b) => a.from - b.from);
  if (breaks.some((each, i) => each.from < 1 || each.from === breaks[i - 1]?.from)) {
    return new Problem("breaks-unreadable", "names a quantity twice or below one");
  }
  return breaks;
}
