/** Text without accents (é as e, ß as ss, ø as o, ł as l), so that words compare as people type them. */
export function foldAccents(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the range of plain ASCII is meant.
  if (/^[\x00-\x7f]*$/.test(text)) return text;
  return text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[ßøØłŁæÆ]/g, (letter) => PLAIN[letter] as string);
}

/** Letters that do not come apart into a plain one and its accent. */
const PLAIN: Record<string, string> = { ß: "ss", ø: "o", Ø: "O", ł: "l", Ł: "L", æ: "ae", Æ: "AE" };
