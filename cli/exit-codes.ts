/** What the program's exit code says. */
export const EXIT = { done: 0, ourFault: 1, usage: 2, inputRefused: 3, conditionMet: 4 } as const;

/** The command line cannot be followed as given; the message says what to give instead. */
export class UsageError extends Error {}

/** Inputs were refused; the message names each with its reason. */
export class InputRefused extends Error {}
