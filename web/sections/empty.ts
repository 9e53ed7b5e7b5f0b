import { make } from "../dom.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";

/**
 * The page without a plan: what it is for, what to give it, and a sample to try.
 *
 * @param tried  what was wrong with sheets of which there is no plan
 */
export function empty(intake: HTMLElement, tried: HTMLElement | null): HTMLElement {
  const words = say.empty;
  return make(
    "div",
    { class: "empty" },
    make(
      "header",
      { class: "masthead" },
      make("div", { class: "top-line" }, make("p", { class: "name" }, say.name)),
      make("h1", {}, say.title.empty),
    ),
    make("p", { class: "lead" }, words.lead),
    make("p", {}, words.privacy),
    intake,
    tried,
    make(
      "section",
      { "aria-labelledby": "which" },
      make("h2", { id: "which" }, words.which),
      make("p", {}, words.whichLead),
      table({
        caption: words.which,
        rows: words.kinds,
        sortable: false,
        columns: [
          { title: words.kindHeads[0]!, value: (row) => row[0] },
          { title: words.kindHeads[1]!, value: (row) => row[1], wide: true },
          { title: words.kindHeads[2]!, value: (row) => row[2], wide: true },
        ],
      }),
    ),
  );
}
