/**
 * Numbers dealt out by the ranks of what they stand for, the lowest rank first; those of one rank keep their order. No two
 * are compared, so that very many of few ranks are put in order in one go.
 *
 * @param rank  by number, a whole number from 0 and below `ranks`
 */
export function dealtOut(numbers: Int32Array, rank: Int32Array, ranks: number): Int32Array<ArrayBuffer> {
  return dealt(numbers, rank, startsOf(countsOf(numbers, rank, ranks)));
}

// a function for each loop: of one with several, an engine has the later ones run slowly again and again

/** By rank and one higher, how many numbers have it. */
function countsOf(numbers: Int32Array, rank: Int32Array, ranks: number): Int32Array {
  const counts = new Int32Array(ranks + 1);
  for (let i = 0; i < numbers.length; i++) counts[rank[numbers[i]!]! + 1]!++;
  return counts;
}

/** The counts, each with all before it. */
function startsOf(counts: Int32Array): Int32Array {
  for (let of = 1; of < counts.length; of++) counts[of]! += counts[of - 1]!;
  return counts;
}

/** Each number at the next place of its rank. */
function dealt(numbers: Int32Array, rank: Int32Array, next: Int32Array): Int32Array<ArrayBuffer> {
  const inOrder = new Int32Array(numbers.length);
  for (let i = 0; i < numbers.length; i++) inOrder[next[rank[numbers[i]!]!]!++] = numbers[i]!;
  return inOrder;
}

/** 0, 1, 2 and so on, so many. */
export function firstNumbers(count: number): Int32Array<ArrayBuffer> {
  const numbers = new Int32Array(count);
  for (let i = 0; i < count; i++) numbers[i] = i;
  return numbers;
}
