import { make } from "./dom.ts";
import { dayWords } from "./format.ts";

/** A day by which something is to be done, with a word where it has passed: "late", "expired". */
export function actOn(day: string, passed: string | false): HTMLElement {
  return make(
    "strong",
    { class: passed === false ? null : "act" },
    dayWords(day),
    passed !== false && make("em", {}, ` ${passed}`),
  );
}

/** A day in the plan on which nothing is to be done yet, with the word for that: "forecast". */
export function notYet(day: string, word: string): HTMLElement {
  return make("span", {}, dayWords(day), make("em", {}, ` ${word}`));
}
