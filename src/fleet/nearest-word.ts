/** Letters that a slip of the keyboard changes, at most. */
const MOST_SLIPS = 2;

/**
 * The word that was probably meant: one that the typed text starts, or else the one that the fewest slips (a letter
 * more, less or other) turn it into.
 *
 * @returns null where none is near
 */
export function nearestWord(typed: string, words: readonly string[]): string | null {
  const begun = words.filter((word) => typed.length >= 3 && word.startsWith(typed));
  if (begun.length === 1) return begun[0]!;
  let nearest: string | null = null;
  let fewest = Math.min(MOST_SLIPS, Math.floor(typed.length / 3)) + 1;
  for (const word of words) {
    const slips = slipsBetween(typed, word);
    if (slips < fewest) [nearest, fewest] = [word, slips];
  }
  return nearest;
}

/** Letters to put in, leave out or change to turn one word into the other (Levenshtein 1966). */
function slipsBetween(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(change, above[j]! + 1, row[j - 1]! + 1));
    }
    above = row;
  }
  return above[b.length]!;
}
