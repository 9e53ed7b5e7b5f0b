/**
 * What a test measured where hardly anything was left: less than the least that can be a capacity, and no less than none;
 * null where a word stands for a failed test ("fail").
 */
export class NothingLeft {
  constructor(readonly amount: number | null) {}
}
