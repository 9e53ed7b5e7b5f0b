import type { UseLogRow } from "../fleet/rows.ts";

/** Rows of an item from which a usual size can be told. */
const ROWS_TO_TELL = 5;
/** A row is bulk beyond the median by this many median absolute deviations (scaled to a normal's deviation). */
const DEVIATIONS = 5;
const NORMAL_SCALE = 1.4826;
/** Where more rows than this, and more than one, are large, large is how the item is used. */
const MOST_BULK = 0.1;

/** An item's uses, the bulk issues among the log's rows, and how many units a use mostly takes. */
export interface SplitUses {
  uses: readonly UseLogRow[];
  bulk: readonly UseLogRow[];
  usual: number;
}

/**
 * Parts an item's uses into uses and bulk issues: single rows far larger than the item's usual use, such as a shelf
 * restocked after an audit and logged without a reason. They would wreck a rate, so they are not counted as use.
 *
 * The rule: larger than the median by five scaled median absolute deviations, the deviation taken as at least one
 * unit, and one such row or no more than a tenth of the rows.
 *
 * @see Hampel, F. R. (1974), The influence curve and its role in robust estimation, Journal of the American
 *   Statistical Association 69, 383-393, for the median absolute deviation
 */
export function splitBulk(rows: readonly UseLogRow[]): SplitUses {
  const sizes = rows.map((row) => row.quantity);
  const usual = middle(sizes);
  // most logs hold nothing large, since the deviation is no less than one
  const most = sizes.reduce((largest, size) => Math.max(largest, size), 0);
  if (most <= usual + DEVIATIONS) return { uses: rows, bulk: [], usual };
  const deviation = Math.max(1, NORMAL_SCALE * middle(sizes.map((size) => Math.abs(size - usual))));
  const isBulk = (row: UseLogRow) => row.quantity > usual + DEVIATIONS * deviation;
  const bulk = rows.filter(isBulk);
  if (rows.length < ROWS_TO_TELL || bulk.length > Math.max(1, MOST_BULK * rows.length))
    return { uses: rows, bulk: [], usual };
  return { uses: rows.filter((row) => !isBulk(row)), bulk, usual };
}

function middle(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length >> 1;
  if (sorted.length === 0) return 0;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
