import type { ColumnSample } from "./profile-sample.ts";

/** What a column's whole numbers are like, where all its cells are such. */
export interface WholeNumbers {
  /** True where all cells are bare whole numbers from 1,000 to 99,999. */
  thousands: boolean;
  /** True where the cells count the rows: 1, 2, 3. */
  counts: boolean;
  /** True where every cell is a whole number such as a place has of one thing, and whether words stand behind them ("3 devices"). */
  fewEach: boolean;
  worded: boolean;
  /** True where they are such numbers and not all 1. */
  severalEach: boolean;
  /** True where several cells are all whole numbers from 50 to 100, as charges in percent are. */
  levels: boolean;
}

/** A whole number under a thousand, with at most a word behind it, or packs of a size. */
const FEW = /^\d{1,3}( \p{L}+( (of|de|à|zu) \d+)?)?$/u;

/** What the whole numbers of a column are like. */
export function wholeNumbers({ texts, step }: ColumnSample): WholeNumbers {
  const all = (pattern: RegExp) => texts.length > 0 && texts.every((text) => pattern.test(text));
  const several = texts.length > 1;
  const fewEach = all(FEW);
  return {
    thousands: all(/^[1-9]\d{3,4}$/),
    fewEach,
    severalEach: fewEach && texts.some((text) => Number.parseInt(text, 10) > 1),
    levels: several && all(/^([5-9]\d|100)$/),
    worded: fewEach && texts.some((text) => / /.test(text)),
    counts: several && texts.every((text, at) => text === String(at * step + 1)),
  };
}
