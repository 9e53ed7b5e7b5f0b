import { dealtOut, firstNumbers } from "./dealt-out.ts";

/** One part of a sort key; null sorts before everything. */
type KeyPart = string | number | null;

/** Fewer rows are compared pair by pair. */
const FEW = 30;
/** Parts by which many rows are put in order without comparing any two; most are told apart by then. */
const RANKED = 3;

interface Keyed<Row> {
  row: Row;
  key: readonly KeyPart[];
}

/**
 * A copy of rows in the order of their keys, compared part by part: numbers by size, text by code unit
 * (no locale, so that every machine sorts alike). Rows with equal keys keep their order.
 *
 * Many rows have few values of a part: only the values are compared, and rows are dealt out by their ranks, from the
 * last part to the first, each deal keeping the order of the one before.
 */
export function sortBy<Row>(rows: readonly Row[], key: (row: Row) => readonly KeyPart[]): Row[] {
  if (rows.length < FEW) return pairByPair(rows, key, 0);
  if (areInOrder(rows, key)) return [...rows];
  const parts = rankedParts(rows, key);
  const order = parts.reduceRight(
    (sofar, { rank, values }) => dealtOut(sofar, rank, values),
    firstNumbers(rows.length),
  );
  const sorted: Row[] = [];
  for (let from = 0, to = 0; from < order.length; from = to) {
    const first = order[from]!;
    to = from + 1;
    while (to < order.length && sameRanks(parts, order[to]!, first)) to++;
    if (to === from + 1) sorted.push(rows[first]!);
    else {
      const alike = Array.from(order.subarray(from, to), (at) => rows[at]!);
      for (const row of pairByPair(alike, key, RANKED)) sorted.push(row);
    }
  }
  return sorted;
}

function areInOrder<Row>(rows: readonly Row[], key: (row: Row) => readonly KeyPart[]): boolean {
  let before = key(rows[0]!);
  for (let at = 1; at < rows.length; at++) {
    const now = key(rows[at]!);
    if (compareKeys(before, now, 0) > 0) return false;
    before = now;
  }
  return true;
}

function sameRanks(parts: readonly RankedPart[], a: number, b: number): boolean {
  for (const { rank } of parts) if (rank[a] !== rank[b]) return false;
  return true;
}

function pairByPair<Row>(rows: readonly Row[], key: (row: Row) => readonly KeyPart[], from: number): Row[] {
  const keyed: Keyed<Row>[] = rows.map((row) => ({ row, key: key(row) }));
  return keyed.sort((a, b) => compareKeys(a.key, b.key, from)).map(({ row }) => row);
}

/** The ranks of rows by one part of their keys. */
interface RankedPart {
  /** By row, the place of its value among the different ones. */
  rank: Int32Array;
  values: number;
}

/** The first parts of all keys as ranks. */
function rankedParts<Row>(rows: readonly Row[], key: (row: Row) => readonly KeyPart[]): RankedPart[] {
  const parts = Array.from({ length: Math.min(RANKED, key(rows[0]!).length) }, () => new MetValues(rows.length));
  for (let at = 0; at < rows.length; at++) {
    const values = key(rows[at]!);
    for (let part = 0; part < parts.length; part++) parts[part]!.note(at, values[part] ?? null);
  }
  return parts.map((met) => met.ranked());
}

/** The values of one part of many keys, numbered as they are met. */
class MetValues {
  readonly #numbers = new Map<KeyPart, number>();
  readonly #ofRow: Int32Array;
  #last: KeyPart = null;
  #lastNumber = -1;

  constructor(rows: number) {
    this.#ofRow = new Int32Array(rows);
  }

  note(row: number, value: KeyPart): void {
    // rows that stand together often have one value
    if (value !== this.#last || this.#lastNumber === -1) {
      let number = this.#numbers.get(value);
      if (number === undefined) {
        number = this.#numbers.size;
        this.#numbers.set(value, number);
      }
      this.#last = value;
      this.#lastNumber = number;
    }
    this.#ofRow[row] = this.#lastNumber;
  }

  ranked(): RankedPart {
    const rankOf = new Int32Array(this.#numbers.size);
    [...this.#numbers.keys()].sort(compareParts).forEach((value, place) => {
      rankOf[this.#numbers.get(value)!] = place;
    });
    const rank = this.#ofRow.map((number) => rankOf[number]!);
    return { rank, values: rankOf.length };
  }
}

function compareKeys(a: readonly KeyPart[], b: readonly KeyPart[], from: number): number {
  for (let part = from; part < Math.max(a.length, b.length); part++) {
    const order = compareParts(a[part] ?? null, b[part] ?? null);
    if (order !== 0) return order;
  }
  return 0;
}

/** Two parts of a sort key: null first, numbers by size, text by code unit. */
function compareParts(a: KeyPart, b: KeyPart): number {
  if (a === b) return 0;
  if (a === null) return -1;
  if (b === null) return 1;
  return a < b ? -1 : 1;
}
