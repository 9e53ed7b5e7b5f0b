import { countText } from "./count-text.ts";

/** The first few names, and how many more there are. */
export function firstTold(names: readonly string[], most: number): string {
  const more = names.length - most;
  return more > 0 ? `${names.slice(0, most).join(", ")} and ${countText(more)} more` : names.join(", ");
}
