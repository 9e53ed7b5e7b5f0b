/** A list of integers of a length not known ahead: in a typed array they take half the room, and collecting garbage passes them over. */
export class GrowingIntegers {
  #values = new Int32Array(1024);
  #length = 0;

  get length(): number {
    return this.#length;
  }

  push(value: number): void {
    if (this.#length === this.#values.length) {
      const wider = new Int32Array(2 * this.#length);
      wider.set(this.#values);
      this.#values = wider;
    }
    this.#values[this.#length++] = value;
  }

  /** All that were pushed, with no room for more. */
  all(): Int32Array {
    return this.#values.subarray(0, this.#length);
  }
}
