import { readingsByAge } from "../charts/readings-by-age.ts";
import { make } from "../dom.ts";
import type { Read } from "../engine/messages.ts";
import { numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { lead } from "./section.ts";

/** What the sheets say before there is a forecast: the rows read, and the readings as they lie. */
export function firstLook({ reading, readings }: Read): HTMLElement {
  const sum = (of: (input: (typeof reading.inputs)[number]) => number) =>
    numberWords(reading.inputs.reduce((all, input) => all + of(input), 0));
  const files = new Set(reading.inputs.map(({ file }) => file)).size;
  return make(
    "main",
    { id: "plan" },
    make(
      "header",
      { class: "masthead" },
      make("div", { class: "top-line" }, make("p", { class: "name" }, say.name)),
      make("h1", {}, say.firstLook.title),
    ),
    lead(say.firstLook.lead),
    make(
      "p",
      {},
      say.sheets.lead(
        sum((input) => input.rows),
        sum((input) => input.used),
        sum((input) => input.setAside),
        numberWords(files),
        files === 1,
      ),
    ),
    readingsByAge(reading, readings),
  );
}
