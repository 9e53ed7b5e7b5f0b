import { withinOneEdit } from "../values/month-words.ts";

/** Names compared at most when one is sought that was perhaps meant: a hint must not cost more than the reading. */
const MOST_COMPARED = 20_000;

/** The one known name within one typing error of a name, or that looks the same (O and 0, I and 1); null where none or several. */
export function nearName(name: string, known: Iterable<string>): string | null {
  let found: string | null = null;
  let compared = 0;
  for (const candidate of known) {
    if (++compared > MOST_COMPARED) break;
    if (candidate === name || (!withinOneEdit(name, candidate) && lookalike(name) !== lookalike(candidate))) continue;
    if (found !== null) return null;
    found = candidate;
  }
  return found;
}

function lookalike(name: string): string {
  return name
    .replace(/[\s_./-]/g, "")
    .replaceAll("o", "0")
    .replace(/[il]/g, "1");
}
