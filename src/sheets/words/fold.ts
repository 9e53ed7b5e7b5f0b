/** Text without accents (é as e, ß as ss, ø as o), so that words compare as people type them. */
export function foldAccents(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the range of plain ASCII is meant.
  if (/^[\x00-\x7f]*$/.test(text)) return text;
  return text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/ß/g, "ss")
    .replace(/ø/g, "o")
    .replace(/Ø/g, "O");
}
