/** Dates, numbers and money as the reader is used to them, or as ISO dates where the reader switched to these. */

const locale = readersLocale();
const wholeDay = new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });
const longMonth = new Intl.DateTimeFormat(locale, { month: "long", year: "numeric", timeZone: "UTC" });
const shortMonth = new Intl.DateTimeFormat(locale, { month: "short", timeZone: "UTC" });
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

// ISO 4217: no currency is involved. The engine writes it where the catalogue names none.
const NO_CURRENCY = "XXX";

/**
 * Integer minor units as money. The count of minor digits is the currency's own (ISO 4217, as Intl knows it).
 *
 * @param exact  with minor digits; without, rounded to major units, for figures
 */
export function moneyWords(minorUnits: number, currency: string, exact = true): string {
  if (currency === NO_CURRENCY) return minorUnits === 0 ? "–" : numberWords(minorUnits / 100, exact ? 2 : 0);
  try {
    const digits =
      new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
    const major = minorUnits / 10 ** digits;
    // With ISO dates go ISO 4217 codes, and figures that any program reads.
    if (switches.isoDates) return `${major.toFixed(exact ? digits : 0)} ${currency}`;
    const rounded = exact ? {} : { maximumFractionDigits: 0 };
    return new Intl.NumberFormat(locale, { style: "currency", currency, ...rounded }).format(major);
  } catch {
    // A currency that is no ISO code is the user's own word: keep it as it stands.
    return `${numberWords(minorUnits / 100, exact ? 2 : 0)} ${currency}`.trim();
  }
}

// ISO days and months, and money with a currency code on either side, as the engine writes them.
const IN_SENTENCES =
  /\b(\d{4}-\d\d-\d\d)\b|\b(\d{4}-(?:0[1-9]|1[0-2]))\b|\b([A-Z]{3}) (\d+\.\d\d)\b|\b(\d+\.\d\d) ([A-Z]{3})\b/g;

/** A sentence of the engine with its dates and money as the reader is used to them. */
export function sentenceWords(sentence: string): string {
  return sentence.replace(IN_SENTENCES, (_, day, month, codeBefore, after, before, codeAfter) => {
    if (day) return dayWords(day);
    if (month) return monthWords(month);
    return moneyWords(Math.round(100 * Number(after ?? before)), codeBefore ?? codeAfter);
  });
}

/** Integer minor units as a plain number in major units, for a chart's axis. */
export function majorUnits(minorUnits: number, currency: string): number {
  try {
    const format = new Intl.NumberFormat("en", { style: "currency", currency });
    return minorUnits / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2);
  } catch {
    return minorUnits / 100;
  }
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
