import { button, make } from "../dom.ts";
import { printAlone } from "../print-alone.ts";
import { say } from "../strings.ts";
import { unbroken } from "../unbroken.ts";

export type SectionName = keyof typeof say.sections;

/** A section of the report: its short name, the question that it answers, and its content. */
export function section(
  name: SectionName,
  question: string,
  ...content: (Node | string | null | false)[]
): HTMLElement {
  return make(
    "section",
    { id: name, "aria-labelledby": `${name}-heading` },
    make(
      "header",
      {},
      make("p", { class: "kicker" }, say.sections[name]),
      make("h2", { id: `${name}-heading`, tabindex: -1 }, question),
    ),
    ...content,
  );
}

/** A sentence that leads a section in. */
export function lead(text: string): HTMLElement {
  return make("p", { class: "lead" }, unbroken(text));
}

/** A question inside a section with what answers it. */
export function answer(question: string, ...content: (Node | string | null | false)[]): HTMLElement {
  return make("div", { class: "answer" }, make("h3", {}, question), ...content);
}

/** A question with sentences that answer it, a point each; null where none is to be said. */
export function points(question: string, sentences: readonly (string | false)[]): HTMLElement | null {
  const said = sentences.filter((sentence) => sentence !== false);
  if (said.length === 0) return null;
  return answer(
    question,
    make(
      "ul",
      {},
      said.map((sentence) => make("li", {}, unbroken(sentence))),
    ),
  );
}

/** A question with a list that answers it, which prints by itself to be taken along. */
export function list(question: string, table: HTMLElement): HTMLElement {
  const whole = answer(question, table);
  whole.append(button(say.table.printAlone, () => printAlone(whole), { class: "link act-on" }));
  return whole;
}
