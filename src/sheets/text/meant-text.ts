import { decoded } from "./decoded.ts";

/** What every byte is in Windows-1252. */
const CHARACTERS = decoded(
  Uint8Array.from({ length: 256 }, (_, byte) => byte),
  "windows-1252",
);

/** Two or three characters that the one code makes of one of the other. */
const MISREAD = /[ÂÃ][\x80-\xbf\u0152-\u2122]|â€/;

/**
 * A text as it was meant, where a program read it as Windows-1252 though it was UTF-8, and wrote down what it saw: "Ã©" for
 * "é". A text of which not all can be told so is as it was.
 */
export function meantText(text: string): string {
  if (!MISREAD.test(text)) return text;
  const bytes = Uint8Array.from(text, (character) => CHARACTERS.indexOf(character));
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return text;
  }
}
