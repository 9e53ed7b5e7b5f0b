import { say } from "./strings.ts";

const style = document.createElement("style");
let line: string = say.cautions.picture;

/** The line at the foot of printed pages and pictures: the caution, and as of when. */
export function footerLine(): string {
  return line;
}

/** Puts a line and the page number at the foot of every printed page. Its words come with the plan, so it is no file. */
export function setPrintFooter(text: string): void {
  line = text;
  style.textContent =
    `@page { @bottom-left { content: ${JSON.stringify(text)}; font: 8pt sans-serif; } ` +
    `@bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }`;
  if (!style.isConnected) document.head.append(style);
}
