import { printPage } from "../charts/paper.ts";
import { button, make } from "../dom.ts";
import { dayWords, isoDates, monthWords } from "../format.ts";
import { switchIso } from "../iso-days.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import type { SectionName } from "./section.ts";

/** The head of the report: whose plan, as of when, how far, and the contents. */
export function masthead(session: PlannedSession): HTMLElement {
  const { plan } = session;
  const dated = plan.datedStock.reduce((sum, row) => sum + row.quantity, 0);
  return make(
    "header",
    { class: "masthead" },
    make("div", { class: "top-line" }, make("p", { class: "name" }, say.name), tools()),
    make(
      "div",
      { class: "title" },
      make("h1", {}, say.title.plan),
      make("p", { class: "as-of" }, say.title.asOf(dayWords(plan.asOf))),
    ),
    make(
      "div",
      { class: "title" },
      make("p", { class: "facts" }, say.title.looking(monthWords(plan.horizon.from), monthWords(plan.horizon.to))),
      make("p", { class: "facts" }, say.title.counts(plan.short[0]?.devices ?? 0, plan.packs.length, dated)),
    ),
  );
}

function tools(): HTMLElement {
  return make(
    "p",
    { class: "tools" },
    make(
      "label",
      {},
      make("input", { type: "checkbox", id: "iso-dates", checked: isoDates(), change: switchIso }),
      make("span", {}, say.iso),
    ),
    button(say.print, printPage),
  );
}

/** The contents line, which stays in sight; the heads of long tables stay below it. */
export function contents(names: readonly SectionName[]): HTMLElement {
  const line = make(
    "nav",
    { class: "contents", "aria-label": say.contents },
    make(
      "ul",
      {},
      names.map((name) => make("li", {}, make("a", { href: `#${name}` }, say.sections[name]))),
    ),
  );
  const told = () => document.documentElement.style.setProperty("--contents", `${line.offsetHeight}px`);
  new ResizeObserver(told).observe(line);
  return line;
}
