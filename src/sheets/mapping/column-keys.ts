/** The name of each column in a columns file: "Group > Header", the second of a name with " #2"; null where unnamed. */
export function columnKeys(header: readonly (string | null)[], groups: readonly (string | null)[]): (string | null)[] {
  const seen = new Map<string, number>();
  return header.map((name, column) => {
    if (name === null) return null;
    const group = groups[column] ?? null;
    const key = (group === null ? name : `${group} > ${name}`).replace(/\s+/g, " ").trim();
    const count = (seen.get(key) ?? 0) + 1;
    seen.set(key, count);
    return count === 1 ? key : `${key} #${count}`;
  });
}

/** Key under which two columns' names are the same: without case. */
export function sameKey(key: string): string {
  return key.toLowerCase();
}
