import { chanceWords, dayWords, moneyWords, monthWords, numberWords } from "./format.ts";
import type { Column } from "./table-spec.ts";

/** A column of days. */
export function dayColumn<Row>(title: string, value: (row: Row) => string): Column<Row> {
  return { title, value, show: (row) => dayWords(value(row)) };
}

/** A column of months. */
export function monthColumn<Row>(title: string, value: (row: Row) => string): Column<Row> {
  return { title, value, show: (row) => monthWords(value(row)) };
}

/** A column of numbers, of counts as a rule. */
export function countColumn<Row>(title: string, value: (row: Row) => number, decimals = 0): Column<Row> {
  return { title, value, show: (row) => numberWords(value(row), decimals), figures: true };
}

/** A column of chances. */
export function chanceColumn<Row>(title: string, value: (row: Row) => number): Column<Row> {
  return { title, value, show: (row) => chanceWords(value(row)), figures: true };
}

/** A column of sums, each in its row's currency. */
export function moneyColumn<Row extends { currency: string }>(title: string, value: (row: Row) => number): Column<Row> {
  return { title, value, show: (row) => moneyWords(value(row), row.currency), figures: true };
}
