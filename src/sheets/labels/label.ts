import type { Day } from "../../calendar/day.ts";

/** What a scanned label says of a unit; null where it does not say it. */
export interface Label {
  /** GTIN of 14 digits, or the labeller's code and product number of a HIBC. */
  product: string | null;
  lot: string | null;
  serial: string | null;
  expiry: Day | null;
  made: Day | null;
  quantity: number | null;
}

/** A label that cannot be trusted, with why: words that follow "the label". */
export class BadLabel {
  constructor(readonly because: string) {}
}

/** A label that says nothing yet. */
export function blankLabel(): Label {
  return { product: null, lot: null, serial: null, expiry: null, made: null, quantity: null };
}
