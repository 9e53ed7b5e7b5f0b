import { once } from "node:events";
import { styleText } from "node:util";
import type { TextSetting } from "../src/index.ts";
import { clearProgress } from "./progress.ts";
import { terminalText } from "./terminal-text.ts";

/** Width where the terminal does not say: what a printed page and an old terminal hold. */
const USUAL_WIDTH = 80;
/** Tables need some room even where a terminal says that there is none. */
const LEAST_WIDTH = 40;

/** Writes text to stdout, waiting where a pipe is slower than we are. */
export async function print(chunks: Iterable<string>): Promise<void> {
  clearProgress();
  for (const chunk of chunks) {
    if (!process.stdout.write(chunk)) await once(process.stdout, "drain");
  }
}

/** Says something beside the result, on stderr. */
export function note(text: string): void {
  clearProgress();
  process.stderr.write(`${terminalText(text)}\n`);
}

/** Says what to do next, to a person at a terminal only. */
export function suggest(text: string): void {
  if (process.stdout.isTTY && process.stderr.isTTY) note(`Next: ${text}`);
}

/** Words as they can be typed at a shell: quoted where it would take them apart. */
export function typed(words: readonly string[]): string {
  return words.map((word) => (/^[\w./:=@+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`)).join(" ");
}

/** How text for stdout is set: the terminal's width, bold headings where it can show them. */
export function stdoutSetting(): TextSetting {
  const { isTTY, columns } = process.stdout;
  const width = Math.max(LEAST_WIDTH, columns || Number(process.env.COLUMNS) || USUAL_WIDTH);
  const plain = !isTTY || Boolean(process.env.NO_COLOR) || process.env.TERM === "dumb";
  return plain ? { width } : { width, heading: (text) => styleText("bold", text) };
}
