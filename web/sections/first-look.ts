import { readingsByAge } from "../charts/readings-by-age.ts";
import { make } from "../dom.ts";
import type { Read } from "../engine/messages.ts";
import { rowsRead } from "../rows-read.ts";
import { say } from "../strings.ts";
import { lead } from "./section.ts";

/** What the sheets say before there is a forecast: the rows read, and the readings as they lie. */
export function firstLook({ reading, readings }: Read): HTMLElement {
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
    make("p", {}, rowsRead(reading)),
    readingsByAge(reading, readings),
  );
}
