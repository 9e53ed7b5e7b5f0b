/**
 * What the reader chose in lists and boxes of the report, by the control's id: every new plan makes the controls anew,
 * and they start where the reader left them, after a reload as well. What a new fleet does not have is passed over.
 */
const kept = new Map<string, string>(inStore((store, key) => JSON.parse(store.getItem(key)!)) ?? []);

export function keptChoice(id: string): string | null {
  return kept.get(id) ?? null;
}

/** Keeps a choice; null forgets it. */
export function keepChoice(id: string, value: string | null): void {
  if (value === null) kept.delete(id);
  else kept.set(id, value);
  inStore((store, key) => store.setItem(key, JSON.stringify([...kept])));
}

/** Keeps nothing any longer in this browser. */
export function forgetChoices(): void {
  kept.clear();
  inStore((store, key) => store.removeItem(key));
}

/** Pages opened from disk share one store. A browser that refuses to keep anything (a private window) is no fault. */
function inStore<Found>(run: (store: Storage, key: string) => Found): Found | null {
  try {
    return run(localStorage, `wanecast ${location.pathname}`);
  } catch {
    return null;
  }
}
