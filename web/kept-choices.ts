/**
 * What the reader chose in lists and boxes of the report, by the control's id: every new plan makes the controls anew,
 * and they start where the reader left them. What a new fleet does not have is passed over.
 */
const kept = new Map<string, string>();

export function keptChoice(id: string): string | null {
  return kept.get(id) ?? null;
}

/** Keeps a choice; null forgets it. */
export function keepChoice(id: string, value: string | null): void {
  if (value === null) kept.delete(id);
  else kept.set(id, value);
}
