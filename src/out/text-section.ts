import { wrapText } from "./text-width.ts";

/** How text for a terminal is set. */
export interface TextSetting {
  /** Columns that a line may take. */
  width: number;
  /** Styles a heading (bold on a terminal); plain where absent. */
  heading?: (text: string) => string;
}

/** The first line of a text. */
export function titleLine(text: string, { width, heading }: TextSetting): string {
  const wrapped = wrapText(text, width);
  return heading?.(wrapped) ?? wrapped;
}

/** A heading over its lines, or nothing where there are none. */
export function section(title: string, body: readonly string[], setting: TextSetting): string[] {
  if (body.length === 0) return [];
  return ["", titleLine(title, setting), ...body];
}

/** Sentences as a list with hyphens, wrapped. */
export function bullets(sentences: readonly string[], { width }: TextSetting): string[] {
  return sentences.map((sentence) => wrapText(`- ${sentence}`, width, "  "));
}

/** Lines joined into text that ends with a newline. */
export function joinLines(lines: readonly string[]): string {
  return `${lines.join("\n")}\n`;
}
