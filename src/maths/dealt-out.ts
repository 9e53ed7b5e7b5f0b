/**
 * Numbers dealt out by the ranks of what they stand for, the lowest rank first; those of one rank keep their order. No two
 * are compared, so that very many of few ranks are put in order in one go.
 *
 * @param rank  by number, a whole number from 0 and below `ranks`
 */
export function dealtOut(numbers: Int32Array, rank: Int32Array, ranks: number): Int32Array<ArrayBuffer> {
  const next = new Int32Array(ranks + 1);
  for (let i = 0; i < numbers.length; i++) next[rank[numbers[i]!]! + 1]!++;
  for (let of = 1; of <= ranks; of++) next[of]! += next[of - 1]!;
  const dealt = new Int32Array(numbers.length);
  for (let i = 0; i < numbers.length; i++) dealt[next[rank[numbers[i]!]!]!++] = numbers[i]!;
  return dealt;
}

/** 0, 1, 2 and so on, so many. */
export function firstNumbers(count: number): Int32Array<ArrayBuffer> {
  const numbers = new Int32Array(count);
  for (let i = 0; i < count; i++) numbers[i] = i;
  return numbers;
}
