import { minorDigits } from "./currency.ts";

/** An exact amount in major units as a fraction; the denominator is positive. */
export interface Exact {
  numerator: bigint;
  denominator: bigint;
}

const DECIMAL = /^([+-]?)(\d*)(?:\.(\d*))?(?:e([+-]?\d+))?$/i;

/**
 * The exact value of decimal text: "38.50" is 77/2.
 *
 * @throws RangeError where the text is no decimal number
 */
export function exactFromText(text: string): Exact {
  const match = DECIMAL.exec(text.trim());
  const whole = match?.[2] ?? "";
  const fraction = match?.[3] ?? "";
  if (!match || whole + fraction === "") throw new RangeError(`exactFromText: "${text}" is no decimal number`);
  const size = BigInt(whole + fraction) * (match[1] === "-" ? -1n : 1n);
  const places = BigInt(fraction.length) - BigInt(match[4] ?? 0);
  return places >= 0n ? reduced(size, 10n ** places) : reduced(size * 10n ** -places, 1n);
}

/** An amount times a whole number or another amount. */
export function timesExact(amount: Exact, factor: number | Exact): Exact {
  const by = typeof factor === "number" ? { numerator: BigInt(factor), denominator: 1n } : factor;
  return reduced(amount.numerator * by.numerator, amount.denominator * by.denominator);
}

/** An amount divided by a whole number > 0, kept exact. */
export function dividedExact(amount: Exact, by: number): Exact {
  return reduced(amount.numerator, amount.denominator * BigInt(by));
}

/** An amount as a floating number, for comparing costs; never for a total. */
export function numberFromExact(amount: Exact): number {
  const { numerator, denominator } = amount;
  const whole = numerator / denominator;
  return Number(whole) + Number(numerator - whole * denominator) / Number(denominator);
}

/** Whole minor units of a currency, rounded once, half up (away from zero below zero). */
export function minorUnits(amount: Exact, currency: string): number {
  return Number(roundedAt(amount, minorDigits(currency)));
}

/**
 * Decimal text of an amount: exact where it ends within the places given, else rounded half up to them; at least
 * the currency's own places are shown ("38.50", not "38.5").
 */
export function exactText(amount: Exact, currency: string, places = 6): string {
  const digits = Math.max(places, minorDigits(currency));
  const scaled = roundedAt(amount, digits);
  const text = (scaled < 0n ? -scaled : scaled).toString().padStart(digits + 1, "0");
  const whole = text.slice(0, text.length - digits);
  const least = minorDigits(currency);
  const fraction = text.slice(text.length - digits);
  const kept = fraction.slice(0, least) + fraction.slice(least).replace(/0+$/, "");
  return `${scaled < 0n ? "-" : ""}${whole}${kept === "" ? "" : `.${kept}`}`;
}

/** Decimal text with commas between thousands: "12345.67" is "12,345.67". */
export function groupedText(decimal: string): string {
  const [whole = "", fraction] = decimal.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}

/**
 * Splits whole minor units over weights so that the shares add up exactly: each gets the whole part of its share,
 * the units left over go to the largest fractions, ties to the first.
 *
 * @param total    whole, >= 0
 * @param weights  whole, >= 0; all zero = even weights
 * @see Hamilton's method, "largest remainder" (common practice, no source)
 */
export function shareOut(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + BigInt(b), 0n);
  const use = sum === 0n ? weights.map(() => 1n) : weights.map((weight) => BigInt(weight));
  const whole = sum === 0n ? BigInt(weights.length) : sum;
  const parts = use.map((weight, index) => {
    const product = BigInt(total) * weight;
    return { index, share: Number(product / whole), rest: product % whole };
  });
  const left = total - parts.reduce((a, part) => a + part.share, 0);
  const byRest = [...parts].sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1));
  for (const part of byRest.slice(0, left)) part.share++;
  return parts.map((part) => part.share);
}

function roundedAt({ numerator, denominator }: Exact, places: number): bigint {
  const scaled = (numerator < 0n ? -numerator : numerator) * 10n ** BigInt(places);
  const rounded = (2n * scaled + denominator) / (2n * denominator);
  return numerator < 0n ? -rounded : rounded;
}

function reduced(numerator: bigint, denominator: bigint): Exact {
  let a = numerator < 0n ? -numerator : numerator;
  let b = denominator;
  while (b !== 0n) [a, b] = [b, a % b];
  return a === 0n ? { numerator: 0n, denominator: 1n } : { numerator: numerator / a, denominator: denominator / a };
}
