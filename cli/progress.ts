import { terminalText } from "./terminal-text.ts";

/** What a terminal does to take back the line that it stands on. */
const CLEAR_LINE = "\r\u001b[2K";

let shown = false;

/** Says what is being worked on, at a terminal that can take a line back: one line, in the place of the one before. */
export function showProgress(text: string): void {
  const { isTTY, columns } = process.stderr;
  if (!isTTY || process.env.TERM === "dumb") return;
  // a line that the terminal wraps could not be taken back
  process.stderr.write(CLEAR_LINE + terminalText(text).slice(0, (columns || 80) - 1));
  shown = true;
}

/** Takes the line away; whatever else is printed does so first. */
export function clearProgress(): void {
  if (shown) process.stderr.write(CLEAR_LINE);
  shown = false;
}
