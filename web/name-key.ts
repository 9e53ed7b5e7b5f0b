/** Key under which names are the same, as in the engine: trimmed, inner blanks folded, without case. */
export function nameKey(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}
