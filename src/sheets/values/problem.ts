import type { FindingCodeName } from "../finding-codes.ts";

/** Why a cell could not be read. */
export class Problem {
  constructor(
    readonly code: FindingCodeName,
    /** What is wrong, to follow the value: `"31.02.2027" ${because}`. */
    readonly because: string,
  ) {}
}

/** The problem of a number outside its column's bounds. */
export function outOfBounds(): Problem {
  return new Problem("number-out-of-range", "is out of bounds");
}
