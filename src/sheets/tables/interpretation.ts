import type { Output, Unclear } from "./table.ts";

/** A reading of a whole header: what rows it yields, and how many points its columns bring. */
export interface Interpretation {
  outputs: Output[];
  points: number;
}

/** What came of reading a header's columns. */
export interface Interpreted {
  best: Interpretation | null;
  /** Readings as good as each other; empty where one is best. */
  tied: Interpretation[];
  /** What must be told before the columns can be read; null where nothing is open. */
  unclear: Unclear | null;
}
