import { drawFigures, forgetFigures } from "./charts/figure.ts";
import { make } from "./dom.ts";
import { nextTask } from "./next-task.ts";
import { ahead } from "./sections/ahead.ts";
import { assumptions } from "./sections/assumptions.ts";
import { batteries } from "./sections/batteries.ts";
import { cautions } from "./sections/cautions.ts";
import { dates } from "./sections/dates.ts";
import { contents, masthead } from "./sections/masthead.ts";
import { orders } from "./sections/orders.ts";
import { sheets } from "./sections/sheets.ts";
import type { PlannedSession } from "./session.ts";
import { say } from "./strings.ts";

/** The parts of the planning sheet, top to bottom, each made when its turn comes. */
function parts(session: PlannedSession, tools: HTMLElement[]): (() => HTMLElement | Promise<HTMLElement>)[] {
  return [
    () => ahead(session),
    () => cautions(session.words.cautions, session.plan.cautions),
    () => batteries(session),
    () => dates(session),
    () => orders(session),
    () => sheets(session, ...tools),
    () => assumptions(session),
  ];
}

let latest = 0;

/**
 * Shows the planning sheet. Parts are made one a task or in several, so that a large fleet does not hold up the page, and each takes
 * the place of the one before it, so that nothing jumps while the plan is made anew. What is in view comes first then.
 */
export async function showReport(content: HTMLElement, session: PlannedSession, tools: HTMLElement[]): Promise<void> {
  latest += 1;
  const mine = latest;
  const focused = document.activeElement?.id;
  const section = document.activeElement?.closest("section")?.id;
  const stay = stayInPlace(document.activeElement);
  let main = content.querySelector<HTMLElement>("[data-unfinished]");
  const isNew = main === null;
  if (main) content.querySelector(".masthead")?.replaceWith(masthead(session));
  else {
    main = make("main", { id: "plan" });
    content.replaceChildren(
      masthead(session),
      contents(["ahead", "batteries", "dates", "orders", "sheets", "assumptions"]),
      main,
      make("footer", {}, make("p", {}, say.title.madeBy(session.plan.engine))),
    );
  }
  // said on paper, should it be printed meanwhile
  main.dataset.unfinished = say.unfinished;
  const all = [...parts(session, tools).entries()];
  for (const [index, part] of inViewFirst(all, main)) {
    const made = await part();
    if (mine !== latest) return forgetFigures(made);
    const before = main.children[index];
    if (before) {
      forgetFigures(before);
      openAsBefore(before, made);
      before.replaceWith(made);
      stay();
    } else main.append(made);
    drawFigures();
    await nextTask();
    if (mine !== latest) return;
  }
  main.dataset.unfinished = "";
  // the part that the page's address names was not there yet when the page was opened
  if (isNew) document.getElementById(location.hash.slice(1))?.scrollIntoView();
  await focusWhenThere(focused);
  // what was pressed has gone with what it did: the keyboard goes on where it stood
  if (section && document.activeElement === document.body)
    document.getElementById(`${section}-heading`)?.focus({ preventScroll: true });
}

/** Parts whose place is in view before the others; from top to bottom as long as not every part has its place. */
function inViewFirst<Part>(all: [number, Part][], main: HTMLElement): [number, Part][] {
  if (main.children.length < all.length) return all;
  const seen = all.filter(([index]) => {
    const { top, bottom } = main.children[index]!.getBoundingClientRect();
    return bottom > 0 && top < window.innerHeight;
  });
  return [...seen, ...all.filter((part) => !seen.includes(part))];
}

/** What the reader had opened stays open in the new part. */
function openAsBefore(before: Element, made: Element): void {
  const nameOf = (details: Element) => details.id || details.querySelector("summary")?.textContent;
  const names = [...before.querySelectorAll("details[open]")].map(nameOf);
  for (const details of made.querySelectorAll("details")) if (names.includes(nameOf(details))) details.open = true;
}

/** Keeps what has the focus where it stands on the screen, whatever grows above it. */
function stayInPlace(element: Element | null): () => void {
  const top = element?.getBoundingClientRect().top ?? -1;
  if (!element?.id || top < 0 || top > window.innerHeight) return () => {};
  return () => {
    const now = document.getElementById(element.id)?.getBoundingClientRect().top ?? top;
    if (now !== top) window.scrollBy(0, now - top);
  };
}

const FOCUS_TRIES = 20;
const FOCUS_EVERY_MS = 50;

/** Puts the focus back where it was; what is opened again fills a moment later. */
async function focusWhenThere(id: string | undefined): Promise<void> {
  if (!id) return;
  for (let tries = 0; tries < FOCUS_TRIES; tries += 1) {
    if (document.activeElement !== document.body && document.activeElement?.id !== id) return;
    const element = document.getElementById(id);
    if (element) return element.focus({ preventScroll: true });
    await new Promise((done) => setTimeout(done, FOCUS_EVERY_MS));
  }
}
