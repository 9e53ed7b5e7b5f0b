import { groupBy } from "../fleet/group-by.ts";

/** One part of a sort key; null sorts before everything. */
type KeyPart = string | number | null;

/** Fewer rows are compared pair by pair. */
const FEW = 30;

interface Keyed<Row> {
  row: Row;
  key: readonly KeyPart[];
}

/**
 * A copy of rows in the order of their keys, compared part by part: numbers by size, text by code unit
 * (no locale, so that every machine sorts alike). Rows with equal keys keep their order.
 *
 * Rows are parted by each part's values in turn, since many rows have few of them.
 */
export function sortBy<Row>(rows: readonly Row[], key: (row: Row) => readonly KeyPart[]): Row[] {
  const sorted: Row[] = [];
  putInOrder(
    rows.map((row) => ({ row, key: key(row) })),
    0,
    sorted,
  );
  return sorted;
}

function putInOrder<Row>(rows: readonly Keyed<Row>[], part: number, sorted: Row[]): void {
  if (rows.length < FEW) {
    for (const { row } of [...rows].sort((a, b) => compareKeys(a.key, b.key, part))) sorted.push(row);
    return;
  }
  if (rows.every(({ key }) => part >= key.length)) {
    for (const { row } of rows) sorted.push(row);
    return;
  }
  const alike = groupBy(rows, ({ key }) => key[part] ?? null);
  for (const value of [...alike.keys()].sort(compareParts)) putInOrder(alike.get(value)!, part + 1, sorted);
}

function compareKeys(a: readonly KeyPart[], b: readonly KeyPart[], from: number): number {
  for (let part = from; part < Math.max(a.length, b.length); part++) {
    const order = compareParts(a[part] ?? null, b[part] ?? null);
    if (order !== 0) return order;
  }
  return 0;
}

/** Two parts of a sort key: null first, numbers by size, text by code unit. */
export function compareParts(a: KeyPart, b: KeyPart): number {
  if (a === b) return 0;
  if (a === null) return -1;
  if (b === null) return 1;
  return a < b ? -1 : 1;
}
