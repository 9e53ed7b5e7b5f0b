import { make } from "./dom.ts";

/** A sentence whose names, days and percentages stand whole where a line ends, unless one is longer than the line. */
export function unbroken(text: string): (Node | string)[] {
  const parts = text.split(/(\S*\d %\S*|\S+-\S+)/);
  return parts.map((part, at) => (at % 2 === 1 ? make("span", { class: "whole" }, part) : part));
}
