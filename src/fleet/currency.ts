// Currencies whose minor unit is not a hundredth: ISO 4217, list one (from memory).
const NO_MINOR_UNIT = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF".split(" ");
const THOUSANDTHS = "BHD IQD JOD KWD LYD OMR TND".split(" ");

/** ISO 4217 code for "no currency": nobody has named one. */
export const NO_CURRENCY = "XXX";

/** A currency as a sentence names it. */
export function currencyWords(code: string): string {
  return code === NO_CURRENCY ? "no named currency" : code;
}

/** What names one currency and no other, beside its code. */
const NAMED: Readonly<Record<string, string>> = { "€": "EUR", EURO: "EUR", EUROS: "EUR", "£": "GBP", US$: "USD" };

/** A currency by its code, however it is named: "eur" and "€" are EUR. What names none for certain stays, in capitals. */
export function currencyCode(name: string): string {
  const text = name.trim().toUpperCase();
  return NAMED[text] ?? text;
}

/**
 * Decimal digits of a currency's minor unit: 2 for EUR, 0 for JPY, 3 for KWD; 2 for a code that is not known.
 *
 * @see ISO 4217, minor units
 */
export function minorDigits(currency: string): number {
  if (NO_MINOR_UNIT.includes(currency)) return 0;
  return THOUSANDTHS.includes(currency) ? 3 : 2;
}
