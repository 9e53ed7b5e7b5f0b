import { isoDates, setIsoDates } from "./format.ts";
import { keepChoice, keptChoice } from "./kept-choices.ts";
import { show } from "./plan-in-force.ts";

const ISO = "iso-dates";

/** Dates as the reader last chose: in words, or as in ISO 8601. */
export function recallIso(): void {
  setIsoDates(keptChoice(ISO) !== null);
}

export function switchIso(): void {
  setIsoDates(!isoDates());
  keepChoice(ISO, isoDates() ? ISO : null);
  show();
}
