/** Characters of a value that a message shows; a cell may hold a million of them. */
const MAX_SHOWN_VALUE = 80;

/** A value as shown in a message: whole where short, else its start. */
export function shortened(value: string): string {
  return value.length <= MAX_SHOWN_VALUE ? value : `${value.slice(0, MAX_SHOWN_VALUE - 1)}…`;
}
