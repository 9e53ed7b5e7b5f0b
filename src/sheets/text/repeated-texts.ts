/** Texts that a column is judged by, and the share of them that must have stood there before. */
const TEXTS_TO_JUDGE_BY = 1000;
const SHARE_REPEATED = 0.5;
/** Different texts kept at the most, so that memory stays bounded. */
const MOST_KEPT = 20_000;

/**
 * Keeps one copy of each text of a column: few lots, days and places stand in many rows, and what shares its text is
 * compared at a glance and kept but once. A column whose texts hardly repeat, such as serials, is let be.
 */
export class RepeatedTexts {
  readonly #kept = new Map<string, string>();
  #asked = 0;
  #keeps = true;

  /** The copy kept of a text, or the text itself. */
  of(text: string): string {
    if (!this.#keeps) return text;
    this.#asked++;
    const kept = this.#kept.get(text);
    if (kept !== undefined) return kept;
    if (this.#kept.size >= MOST_KEPT) return text;
    this.#kept.set(text, text);
    if (this.#asked >= TEXTS_TO_JUDGE_BY && this.#kept.size > this.#asked * (1 - SHARE_REPEATED)) this.#keeps = false;
    return text;
  }
}
