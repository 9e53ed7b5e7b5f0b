/** Why a cell could not be read: the finding's code and the words after "is". */
export class Problem {
  constructor(
    /** One of the codes of finding-codes.ts. */
    readonly code: string,
    /** What is wrong, to follow the value: `"31.02.2027" ${because}`. */
    readonly because: string,
  ) {}
}
