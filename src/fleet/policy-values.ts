import { dayFromIso } from "../calendar/day.ts";

/** Reads the text of a cell or an option: the value, or what was expected instead. */
export type ReadValue = (text: string) => { value: unknown } | { expected: string };

/** What a number must be besides, and how to say so. */
type NumberRule = [holds: (value: number) => boolean, expected: string];

export const moreThan = (least: number): NumberRule => [(value) => value > least, `more than ${least} was expected`];
export const lessThan = (most: number): NumberRule => [(value) => value < most, `less than ${most} was expected`];
const WHOLE: NumberRule = [Number.isInteger, "a whole number was expected"];

/** A number from `min` to `max`. */
export function number(min: number, max: number, ...more: NumberRule[]): ReadValue {
  const rules: NumberRule[] = [
    [Number.isFinite, "a number was expected"],
    [(value) => value >= min, `${min} or more was expected`],
    [(value) => value <= max, `${max} or less was expected`],
    ...more,
  ];
  return (text) => {
    const value = Number(text);
    const broken = rules.find(([holds]) => !holds(value));
    return broken === undefined ? { value } : { expected: broken[1] };
  };
}

export const whole = (min: number, max: number): ReadValue => number(min, max, WHOLE);

/** A text that fits a pattern, without the blanks about it. */
export function textLike(pattern: RegExp, expected: string): ReadValue {
  return (text) => (pattern.test(text.trim()) ? { value: text.trim() } : { expected });
}

export function oneOf(...words: string[]): ReadValue {
  const expected = `${words.slice(0, -1).join(", ")} or ${words.at(-1)} was expected`;
  return (text) => (words.includes(text) ? { value: text } : { expected });
}

export const day: ReadValue = (text) => {
  const value = dayFromIso(text.trim());
  return value === null ? { expected: "a date as YYYY-MM-DD was expected" } : { value };
};
