/**
 * Text with words from outside (names of files, arguments, a plan's own text) as a terminal may take it: characters that
 * move its cursor or turn the direction of text become blanks, lines stay. The engine has its own way for results; this
 * one is for what is said before the engine is loaded, which help and version never do.
 */
export function terminalText(text: string): string {
  return text.replace(/[^\P{Cc}\n]+|[\u202a-\u202e\u2066-\u2069]+/gu, " ");
}
