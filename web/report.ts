import { make } from "./dom.ts";
import { ahead } from "./sections/ahead.ts";
import { type AssumptionActions, assumptions } from "./sections/assumptions.ts";
import { batteries } from "./sections/batteries.ts";
import { cautions } from "./sections/cautions.ts";
import { dates } from "./sections/dates.ts";
import { contents, masthead } from "./sections/masthead.ts";
import { orders } from "./sections/orders.ts";
import { type SheetActions, sheets } from "./sections/sheets.ts";
import type { PlannedSession } from "./session.ts";
import { say } from "./strings.ts";

export interface ReportActions extends AssumptionActions, SheetActions {
  switchIso: () => void;
}

/** The whole planning sheet, top to bottom. */
export function report(session: PlannedSession, actions: ReportActions, tools: HTMLElement[]): HTMLElement[] {
  return [
    masthead(session, actions.switchIso),
    contents(["ahead", "batteries", "dates", "orders", "sheets", "assumptions"]),
    make(
      "main",
      { id: "plan" },
      ahead(session),
      cautions(session.words.cautions, session.plan.cautions),
      batteries(session),
      dates(session),
      orders(session),
      sheets(session, actions, ...tools),
      assumptions(session, actions),
    ),
    make("footer", {}, make("p", {}, say.title.madeBy(session.plan.engine))),
  ];
}
