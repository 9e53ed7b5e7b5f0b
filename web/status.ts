import { button, make } from "./dom.ts";
import { followStages, stopEngine } from "./engine/engine.ts";
import { say } from "./strings.ts";

/** Where the page says what it does, and what came of it. */
export const status = make("p", { class: "status", role: "status" });

/** Says something until the next thing is said. */
export function tell(text: string): void {
  status.textContent = text;
}

const MENTION_MS = 8000;

/** Says something for a while: good news, which may go by unread, and where it stands what changed. */
export function mention(text: string, changed = false): void {
  tell(text);
  if (changed) status.append(" ", make("a", { href: "#changed" }, say.assumptions.changedHeading));
  const said = status.textContent;
  setTimeout(() => {
    if (status.textContent === said) tell("");
  }, MENTION_MS);
}

/** Says that work is going on, and at which step the engine is; a button stops it. */
export function busy(text: string): void {
  const step = make("span");
  const steps = say.intake.steps;
  followStages((name) => {
    const at = steps.findIndex((one) => one.stage === name);
    if (at >= 0) step.textContent = say.intake.step(at + 1, steps.length, steps[at]!.does);
  });
  status.replaceChildren(`${text} `, step, button(say.intake.stop, stopEngine));
}
