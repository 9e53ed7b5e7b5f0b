import { foldAccents } from "./fold.ts";

const known = new Map<string, string>();

/** A header as plain words: no accents, lower case, signs and underscores as one blank ("Batt. S/N" is "batt s n"), a word parted by a hyphen at a line's end whole. */
export function headerWords(header: string): string {
  let words = known.get(header);
  if (words === undefined) {
    words = foldAccents(header.replace(/-\s*\n\s*(?=\p{Ll})/gu, ""))
      .replace(/([a-z])(?<!\b[mk])([A-Z])/g, "$1 $2")
      .toLowerCase()
      .replace(/(?<=[aw])[·⋅∙]h\b/g, "h")
      .replace(/%/g, " percent ")
      .replace(/[^a-z\d°]+/g, " ")
      .trim();
    if (known.size < 10_000 && header.length < 200) known.set(header, words);
  }
  return words;
}
