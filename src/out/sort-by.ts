/** One part of a sort key; null sorts before everything. */
type KeyPart = string | number | null;

/**
 * A copy of rows in the order of their keys, compared part by part: numbers by size, text by code unit
 * (no locale, so that every machine sorts alike). Rows with equal keys keep their order.
 */
export function sortBy<Row>(rows: readonly Row[], key: (row: Row) => readonly KeyPart[]): Row[] {
  return rows
    .map((row) => ({ row, key: key(row) }))
    .sort((a, b) => compareKeys(a.key, b.key))
    .map(({ row }) => row);
}

function compareKeys(a: readonly KeyPart[], b: readonly KeyPart[]): number {
  for (let part = 0; part < a.length; part++) {
    const order = compareParts(a[part] ?? null, b[part] ?? null);
    if (order !== 0) return order;
  }
  return 0;
}

function compareParts(a: KeyPart, b: KeyPart): number {
  if (a === b) return 0;
  if (a === null) return -1;
  if (b === null) return 1;
  return a < b ? -1 : 1;
}
