import type { DateOrder, WrittenDate } from "../values/date-text.ts";

/** What the dates of one column say about their order. */
export interface ColumnOrder {
  state: "not-needed" | "settled" | "unsettled" | "contradicts";
  order: DateOrder | null;
}

type Ordered = Extract<WrittenDate, { kind: "ordered" }>;

/**
 * The order of day, month and year of a whole column: the one that every date allows. A column that
 * allows two orders is settled by the caller's choice alone; one that allows none contradicts itself.
 *
 * Two-digit years first (27-03-31) are thought of only where the parts are joined by dashes, run
 * together, or fit no other order: with strokes and points, people write the year last.
 */
export function orderOfColumn(dates: readonly Ordered[], choice: DateOrder | null): ColumnOrder {
  if (dates.length === 0) return { state: "not-needed", order: null };
  const fits = (order: DateOrder) => dates.every(({ days }) => days[order] !== null);
  const yearFirst = fits("ymd");
  const possible: DateOrder[] = [];
  if (fits("dmy")) possible.push("dmy");
  if (fits("mdy")) possible.push("mdy");
  if (yearFirst && (possible.length === 0 || choice === "ymd" || dates.every(({ dashed }) => dashed)))
    possible.push("ymd");
  const [one, ...others] = possible;
  if (one === undefined) return { state: "contradicts", order: null };
  const differ = others.some((other) => dates.some(({ days }) => days[one] !== days[other]));
  if (!differ) return { state: "settled", order: one };
  if (choice !== null && possible.includes(choice)) return { state: "settled", order: choice };
  return { state: "unsettled", order: null };
}
