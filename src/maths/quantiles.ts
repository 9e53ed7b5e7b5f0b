import { quantileSorted } from "simple-statistics";

/*
 * Of a list in any order. The library's own look for the place without sorting the list, which takes more code than lists as
 * short as these are worth; they give the same numbers.
 */

/**
 * The value below which a share of some values lies, by straight lines between them.
 *
 * @param values  one or more
 * @param share   0 to 1
 */
export function quantile(values: readonly number[], share: number): number {
  return quantileSorted(
    [...values].sort((a, b) => a - b),
    share,
  );
}

/** The middle of some values; of two in the middle, halfway. */
export const median = (values: readonly number[]): number => quantile(values, 1 / 2);
