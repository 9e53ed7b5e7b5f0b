/** Texts that a column is judged by, and the share of them that must have stood there before. */
const TEXTS_TO_JUDGE_BY = 1000;
const SHARE_REPEATED = 0.5;
/** Different texts looked up at the most, so that memory stays bounded. */
const MOST_KEPT = 20_000;

/**
 * The texts of a column, each under a number. One copy is kept of each: few lots, days and places stand in many rows, and
 * what shares its text is compared at a glance. A column whose texts hardly repeat, such as serials, is let be.
 */
export class ColumnTexts {
  /** By number. */
  readonly texts: string[] = [];
  readonly #numbers = new Map<string, number>();
  #asked = 0;
  #looksUp = true;

  /** The number under which a text is found. */
  numberOf(text: string): number {
    if (!this.#looksUp) return this.texts.push(text) - 1;
    this.#asked++;
    const known = this.#numbers.get(text);
    if (known !== undefined) return known;
    const number = this.texts.push(text) - 1;
    if (this.#numbers.size >= MOST_KEPT) return number;
    this.#numbers.set(text, number);
    if (this.#asked >= TEXTS_TO_JUDGE_BY && this.#numbers.size > this.#asked * (1 - SHARE_REPEATED))
      this.#looksUp = false;
    return number;
  }
}
