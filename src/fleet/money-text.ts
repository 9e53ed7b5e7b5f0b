import { minorDigits, NO_CURRENCY } from "./currency.ts";
import { groupedText } from "./money.ts";

/**
 * An amount as decimal text in major units, for files: 1234567 minor units of EUR are "12345.67".
 *
 * @param minorUnits  whole minor units of the currency
 */
export function decimalMoney(minorUnits: number, currency: string): string {
  const digits = minorDigits(currency);
  if (digits === 0) return String(minorUnits);
  const text = String(Math.abs(minorUnits)).padStart(digits + 1, "0");
  return `${minorUnits < 0 ? "-" : ""}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

/** An amount for people, beside its currency: "12,345.67". */
export function groupedMoney(minorUnits: number, currency: string): string {
  return groupedText(decimalMoney(minorUnits, currency));
}

/** An amount with its currency before it, which is left out where none is named: "EUR 12,345.67". */
export function namedMoney(minorUnits: number, currency: string): string {
  const amount = groupedMoney(minorUnits, currency);
  return currency === NO_CURRENCY ? amount : `${currency} ${amount}`;
}
