/** True for the name of what systems and spreadsheets keep hidden beside sheets: a lock, a copy of what is open, half a file. */
export function isHiddenName(name: string): boolean {
  return /^(\.|~\$)/.test(name);
}
