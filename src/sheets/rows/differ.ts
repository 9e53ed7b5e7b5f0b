import { nameKey } from "../../fleet/name-key.ts";
import { Gone } from "../values/status-words.ts";

const foldedNames = new Map<string, string>();

/** A name as names are compared; remembered, since few stand in many rows. */
export function folded(name: string): string {
  let key = foldedNames.get(name);
  if (key === undefined) {
    if (foldedNames.size > 50_000) foldedNames.clear();
    key = nameKey(name);
    foldedNames.set(name, key);
  }
  return key;
}

/**
 * True for two values of a column that contradict each other; names are compared without case, and neither a blank nor a
 * word that a thing is gone contradicts anything.
 */
export function differ(a: unknown, b: unknown): boolean {
  if (a === b || a === null || b === null || a instanceof Gone || b instanceof Gone) return false;
  if (typeof a === "string" && typeof b === "string") return folded(a) !== folded(b);
  return typeof a !== "object" || JSON.stringify(a) !== JSON.stringify(b);
}
