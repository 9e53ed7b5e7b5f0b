/** Slots of an item, delivered one at a time: thousands of them are never held at once. */
export interface SlotStream {
  slots: number;
  draws: number;
  months: number;
  /** Fills `into` (draws * months, draw-major) with the chance that the slot's first need has come. */
  dueOf(slot: number, into: Float64Array): void;
  endOf(slot: number): number;
  newDue: Float64Array;
}
