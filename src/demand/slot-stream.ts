/** Slots of an item, delivered some at a time: thousands of them are never held at once. */
export interface SlotStream {
  slots: number;
  draws: number;
  months: number;
  /** Adds to `into` (draws * months, draw-major) the chances that the first needs of slots have come; of some draws, as in a life forecast. */
  addDueOf(slots: readonly number[], into: Float64Array, everyDraw?: number): void;
  endOf(slot: number): number;
  newDue: Float64Array;
}
