import { compareNames } from "./format.ts";

type Key = string | number | null;

/** A column by its number, and which way. */
export interface Order {
  at: number;
  direction: "ascending" | "descending";
}

/** Sorts a copy; what is unknown stands last in both directions. */
export function sorted<Row>(
  rows: readonly Row[],
  column: { value: (row: Row) => Key },
  direction: Order["direction"],
): Row[] {
  const keys = rows.map((row) => column.value(row));
  const places = placesOf(keys);
  const sign = direction === "ascending" ? 1 : -1;
  const placed = rows.map((row, at) => ({ row, place: places.get(keys[at]!) ?? null }));
  placed.sort(({ place: x }, { place: y }) => {
    if (x === null || y === null) return x === y ? 0 : x === null ? 1 : -1;
    return sign * (x - y);
  });
  return placed.map(({ row }) => row);
}

/** Where each key stands among the others: numbers by value, words as the reader orders names, each compared once. */
function placesOf(keys: readonly Key[]): Map<Key, number> {
  const known = [...new Set(keys)].filter((key) => key !== null);
  if (known.every((key) => typeof key === "number")) return new Map(known.map((key) => [key, key]));
  known.sort((a, b) => compareNames(String(a), String(b)));
  const places = new Map<Key, number>();
  for (const [at, key] of known.entries()) {
    const before = known[at - 1];
    const same = before !== undefined && compareNames(String(before), String(key)) === 0;
    places.set(key, same ? places.get(before)! : at);
  }
  return places;
}
