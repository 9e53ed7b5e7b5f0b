import { countText } from "./count-text.ts";

/** The first few names, and how many more there are. */
export function firstTold(names: readonly string[], most: number): string {
  const more = names.length - most;
  return more > 0 ? `${names.slice(0, most).join(", ")} and ${countText(more)} more` : names.join(", ");
}

/** Names as a sentence lists them: "a", "a and b", "a, b and c". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
