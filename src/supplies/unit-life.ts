import { addMonths, type Day } from "../calendar/day.ts";
import { lastDayOfMonth, type Month, monthOfDay } from "../calendar/month.ts";
import type { Item } from "../fleet/item-book.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow, OnOrderRow } from "../fleet/rows.ts";

/** What a unit's life hangs on. */
type Dated = Pick<DatedStockRow, "expiry" | "opened">;

/** Last day on which the unit is good: its expiry or, once opened, its days after opening, if sooner. */
export function goodUntil(row: Dated, item: Item): Day {
  if (row.opened === null || item.openedDays === null) return row.expiry;
  return Math.min(row.expiry, row.opened + item.openedDays);
}

/**
 * The day by which an installed unit is swapped: expiry less the swap margin. Opened gel goes by its days after
 * opening, if sooner; the margin is for dates on labels and is not taken off those, nor off a battery's that is listed as a
 * pack, too.
 */
export function swapDay(row: Dated, item: Item, policy: Policy, isPack: boolean): Day {
  return Math.min(row.expiry - (isPack ? 0 : policy.swapBeforeExpiryDays), goodUntil(row, item));
}

/**
 * Last day on which a unit from a shelf may still be fitted, so that it has min_life_days ahead of it and need not be
 * swapped on the same day again.
 */
export function fittableUntil(row: Dated, item: Item, policy: Policy): Day {
  return Math.min(row.expiry - policy.minLifeDays, swapDay(row, item, policy, false) - 1);
}

/**
 * Last day on which a unit on a shelf counts for needs, which fall on the first day of a month: it takes the place of
 * nothing that lapses in its own swap month.
 */
export function countsUntil(row: Dated, item: Item, policy: Policy): Day {
  const swapMonth = monthOfDay(swapDay(row, item, policy, false));
  return Math.min(fittableUntil(row, item, policy), lastDayOfMonth(swapMonth - 1));
}

/** Expiry of a unit that arrives in a month: its life runs to the last day of a month; null = not known. */
export function expiryOfArrival(item: Item, arrives: Month): Day | null {
  const months = item.arrivesWithMonths ?? item.shelfMonths;
  return months === null ? null : lastDayOfMonth(arrives + months);
}

/**
 * When units on order are there, when they are swapped in their turn, and until when they count for needs; Infinity = no
 * limit. An order without a date arrives after the item's lead time from as-of; one whose date has passed, at as-of.
 */
export function lifeOfDelivery(
  { arrives, expiry }: Pick<OnOrderRow, "arrives" | "expiry">,
  item: Item,
  policy: Policy,
) {
  const from = Math.max(policy.asOf, arrives ?? policy.asOf + (item.leadDays ?? 0));
  const last = expiry ?? expiryOfArrival(item, monthOfDay(from)) ?? Number.POSITIVE_INFINITY;
  const unit = { expiry: last, opened: null };
  const isDated = last < Number.POSITIVE_INFINITY && (expiry !== null || item.kind !== "pack");
  return { from, swapDay: swapDay(unit, item, policy, false), until: isDated ? countsUntil(unit, item, policy) : last };
}

/**
 * Swap day of the unit that replaces one that left in a month; Infinity where new units have no known life, or so
 * little of it that the swap margin leaves none (else each replacement would be due at once, for ever).
 */
export function swapDayOfReplacement(item: Item, left: Month, policy: Policy): Day {
  const expiry = expiryOfArrival(item, left);
  if (expiry === null) return Number.POSITIVE_INFINITY;
  const day = expiry - policy.swapBeforeExpiryDays;
  return day > lastDayOfMonth(left) ? day : Number.POSITIVE_INFINITY;
}

/**
 * Day on which a pack from the shelf passes its shelf life, or the age at which packs are replaced whatever their capacity;
 * null = no limit known.
 */
export function packShelfEnd({ shelfMonths }: Item, made: Day | null, { packMaxAgeMonths }: Policy): Day | null {
  const months = Math.min(shelfMonths ?? Infinity, packMaxAgeMonths ?? Infinity);
  return made === null || months === Infinity ? null : addMonths(made, months);
}

/** Month index of a day, counted from as-of's month; days before as-of count as as-of. */
export function monthIndex(day: Day, policy: Policy): number {
  return Math.max(0, monthOfDay(day) - monthOfDay(policy.asOf));
}
