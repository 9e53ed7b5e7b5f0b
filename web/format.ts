import { minorDigits, NO_CURRENCY } from "../src/index.ts";

/** Dates, numbers and money as the reader is used to them, or as ISO dates where the reader switched to these. */

const locale = readersLocale();
// the plan's months are those of this calendar, whatever other the reader's country has
const utc = { timeZone: "UTC", calendar: "gregory" };
const wholeDay = new Intl.DateTimeFormat(locale, { ...utc, day: "numeric", month: "short", year: "numeric" });
const longMonth = new Intl.DateTimeFormat(locale, { ...utc, month: "long", year: "numeric" });
const shortMonth = new Intl.DateTimeFormat(locale, { ...utc, month: "short" });
const collator = new Intl.Collator(locale, { numeric: true });
const byDigits = new Map<number, Intl.NumberFormat>();

const switches = { isoDates: false };

/** The reader's locale; English where the browser names one that is no language tag, as some systems do ("C", "en@posix"). */
function readersLocale(): string {
  try {
    return Intl.getCanonicalLocales(navigator.language)[0] ?? "en";
  } catch {
    return "en";
  }
}

/** Whether dates stand as `2027-03-31` rather than in the reader's own order. */
export function isoDates(): boolean {
  return switches.isoDates;
}

export function setIsoDates(on: boolean): void {
  switches.isoDates = on;
}

/** A day `YYYY-MM-DD` in words. */
export function dayWords(day: string): string {
  return switches.isoDates ? day : wholeDay.format(new Date(`${day}T00:00:00Z`));
}

/** A month `YYYY-MM` in words. */
export function monthWords(month: string): string {
  return switches.isoDates ? month : longMonth.format(new Date(`${month}-01T00:00:00Z`));
}

/** A month's short name without its year, for an axis. */
export function monthTick(month: string): string {
  return switches.isoDates ? month.slice(5) : shortMonth.format(new Date(`${month}-01T00:00:00Z`));
}

/** A number with a fixed count of decimals, so that columns align on the decimal. */
export function numberWords(value: number, decimals = 0): string {
  let format = byDigits.get(decimals);
  if (!format) {
    format = new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
    byDigits.set(decimals, format);
  }
  return format.format(value);
}

/** A number with the decimals that it has. */
export const amountWords = new Intl.NumberFormat(locale, { maximumFractionDigits: 6 }).format;

/** A fraction as a whole percentage. */
export function percentWords(fraction: number): string {
  return `${numberWords(fraction * 100)}\u202f%`;
}

/** A chance as a whole percentage that never claims certainty it does not have. */
export function chanceWords(chance: number): string {
  if (chance > 0 && chance < 0.01) return `<\u00a01\u202f%`;
  if (chance < 1 && chance > 0.99) return `>\u00a099\u202f%`;
  return percentWords(chance);
}

/**
 * Integer minor units as money, with as many minor digits as the engine counted them in: browsers show some currencies
 * without the minor unit that ISO 4217 gives them (HUF, PKR), which would read a hundred times too much.
 *
 * @param digits  minor digits as a rule; 0 rounds to major units, for figures
 */
export function moneyWords(minorUnits: number, currency: string, digits = minorDigits(currency)): string {
  const major = majorUnits(minorUnits, currency);
  if (currency === NO_CURRENCY) return minorUnits === 0 ? "–" : numberWords(major, digits);
  try {
    const places = { minimumFractionDigits: digits, maximumFractionDigits: digits };
    const format = new Intl.NumberFormat(locale, { style: "currency", currency, ...places });
    // With ISO dates go ISO 4217 codes, and figures that any program reads.
    return switches.isoDates ? `${major.toFixed(digits)} ${currency}` : format.format(major);
  } catch {
    // A currency that is no ISO code is the user's own word: keep it as it stands.
    return `${numberWords(major, digits)} ${currency}`.trim();
  }
}

/** A price as decimal text in major units, with as many digits as it has: one that rose has more than the currency. */
export function priceWords(price: string, currency: string): string {
  return moneyWords(Number(price) * 10 ** minorDigits(currency), currency, price.split(".")[1]?.length);
}

/** The currency that amounts are in, after what they are; nothing where the sheets name none. */
export function inCurrency(currency: string): string {
  return currency === NO_CURRENCY ? "" : `, ${currency}`;
}

// ISO days and months, and money with a currency code on either side, as the engine writes them.
const AMOUNT = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)\.\d{2,3}`;
const IN_SENTENCES = new RegExp(
  [
    // not in a longer name, as of a lot
    String.raw`(?<![\w-])(?:(\d{4}-\d\d-\d\d)|(\d{4}-(?:0[1-9]|1[0-2])))(?![\w-])`,
    String.raw`\b([A-Z]{3}) (${AMOUNT})\b`,
    String.raw`(?<![\d.,])(${AMOUNT}) ([A-Z]{3})\b`,
  ].join("|"),
  "g",
);

/** A sentence of the engine with its dates and money as the reader is used to them. */
export function sentenceWords(sentence: string): string {
  return sentence.replace(IN_SENTENCES, (_, day, month, codeBefore, after, before, codeAfter) => {
    if (day) return dayWords(day);
    if (month) return monthWords(month);
    return priceWords((after ?? before).replaceAll(",", ""), codeBefore ?? codeAfter);
  });
}

/** Integer minor units as a plain number in major units, for a chart's axis. */
export function majorUnits(minorUnits: number, currency: string): number {
  return minorUnits / 10 ** minorDigits(currency);
}

/** Orders names as the reader does, with numbers by value: P2 before P10. */
export function compareNames(a: string, b: string): number {
  return collator.compare(a, b);
}

/** "a", "a and b", "a, b and c". */
export function listWords(parts: readonly string[], and: string): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} ${and} ${parts.at(-1)}`;
}
