import type { CodedText } from "./coded-text.ts";

/**
 * Texts that a column is judged by, and the share of them that must have stood there before. Sheets list one item at every
 * place before the next item, so that a long list of places comes again late.
 */
const TEXTS_TO_JUDGE_BY = 8000;
const SHARE_REPEATED = 0.5;
/** Different texts looked up at the most, so that memory stays bounded. */
const MOST_KEPT = 20_000;
/** Places looked at for a text at the most: texts made to crowd one place are not kept. */
const MOST_LOOKS = 32;

/**
 * The texts of a column, each under a number. One copy is kept of each: few lots, days and places stand in many rows, and
 * what shares its text is compared at a glance. A column whose texts hardly repeat, such as serials, is let be.
 */
export class ColumnTexts {
  /** By number. */
  readonly texts: string[] = [];
  // a hash table of numbers, open addressed: a Map would need each cell cut out of its text before it is looked up
  #slots = new Int32Array(64).fill(-1);
  /** By number, as long as texts are looked up. */
  readonly #hashes: number[] = [];
  /** Where the text of a number stands, so that what is compared lies side by side. */
  readonly #starts: number[] = [];
  readonly #lengths: number[] = [];
  #kept = 0;
  #asked = 0;
  #looksUp = true;
  readonly #text: CodedText;

  constructor(text: CodedText) {
    this.#text = text;
  }

  /**
   * The number under which a part of the text is found.
   *
   * @param hash  a number that equal parts have in common
   */
  numberOf(from: number, to: number, hash: number): number {
    if (!this.#looksUp) return this.texts.push(this.#text.slice(from, to)) - 1;
    this.#asked++;
    const last = this.#slots.length - 1;
    let slot = slotOf(hash) & last;
    for (let looks = 0; looks < MOST_LOOKS; looks++) {
      const number = this.#slots[slot]!;
      if (number === -1) return this.#keep(from, to, slot, hash);
      if (this.#hashes[number] === hash && this.#isAt(number, from, to)) return number;
      slot = (slot + 1) & last;
    }
    return this.#add(from, to, hash);
  }

  #add(from: number, to: number, hash: number): number {
    this.#hashes.push(hash);
    this.#starts.push(from);
    this.#lengths.push(to - from);
    return this.texts.push(this.#text.slice(from, to)) - 1;
  }

  #keep(from: number, to: number, slot: number, hash: number): number {
    const number = this.#add(from, to, hash);
    if (this.#kept >= MOST_KEPT) return number;
    this.#slots[slot] = number;
    this.#kept++;
    if (this.#asked >= TEXTS_TO_JUDGE_BY && this.#kept > this.#asked * (1 - SHARE_REPEATED)) this.#looksUp = false;
    else if (2 * this.#kept > this.#slots.length) this.#widen();
    return number;
  }

  /** True where the part is the text of a number. */
  #isAt(number: number, from: number, to: number): boolean {
    const length = to - from;
    if (this.#lengths[number] !== length) return false;
    const { codes } = this.#text;
    const start = this.#starts[number]!;
    for (let at = 0; at < length; at++) if (codes[start + at] !== codes[from + at]) return false;
    return true;
  }

  #widen(): void {
    const narrow = this.#slots;
    this.#slots = new Int32Array(4 * narrow.length).fill(-1);
    const last = this.#slots.length - 1;
    for (const number of narrow) {
      if (number === -1) continue;
      let slot = slotOf(this.#hashes[number]!) & last;
      while (this.#slots[slot] !== -1) slot = (slot + 1) & last;
      this.#slots[slot] = number;
    }
  }
}

/** A sum's high digits tell texts apart as well as its low ones. */
function slotOf(hash: number): number {
  return hash ^ (hash >>> 16);
}
