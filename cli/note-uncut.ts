import type { Plan } from "../src/index.ts";
import { note } from "./print.ts";

/** Says that the order files hold more than the budget pays, so that nobody orders all of it from them. */
export function noteUncut({ deferrals }: Plan): void {
  if (deferrals.length === 0) return;
  note("The order files hold the whole schedule, over the budget too; `wanecast orders` lists what to defer.");
}
