// first of all, since it starts the engine
import "./engine/engine.ts";
import "./style/page.css";
import "./style/figure.css";
import "./style/table.css";
import "./style/form.css";
import "./style/print.css";
import { followColours, forgetFigures } from "./charts/figure.ts";
import { keepChartsPrintable } from "./charts/paper.ts";
import { make } from "./dom.ts";
import { Stopped } from "./engine/engine.ts";
import type { Read } from "./engine/messages.ts";
import { dayWords } from "./format.ts";
import { intake, listenForDrops, listenForPastes } from "./intake/intake.ts";
import { recallIso } from "./iso-days.ts";
import { followOtherWindows } from "./kept-work.ts";
import { openPage } from "./open-page.ts";
import { takeLink } from "./own-choices.ts";
import { inForce, showOn } from "./plan-in-force.ts";
import { setPrintFooter } from "./print-footer.ts";
import { showReport } from "./report.ts";
import { cautions } from "./sections/cautions.ts";
import { empty } from "./sections/empty.ts";
import { firstLook } from "./sections/first-look.ts";
import { scanBox } from "./sections/scan-box.ts";
import { sheets } from "./sections/sheets.ts";
import type { PlannedSession, ReadSession, Session } from "./session.ts";
import { status, tell } from "./status.ts";
import { say } from "./strings.ts";
import { takeFiles } from "./take-sheets.ts";

const page = document.getElementById("page")!;
const content = make("div", { class: "report" });
page.replaceChildren(make("a", { class: "skip", href: "#plan" }, say.skip), status, content);

showOn({ show: showSession, preview });

const scans = scanBox();

async function showSession(session: Session): Promise<void> {
  // what a saved report is called, and what stands over it where a browser prints no foot of ours
  document.title = session.plan === null ? say.name : say.title.ofPlan(session.plan.asOf);
  if (session.plan !== null) {
    setPrintFooter(say.printFooter(dayWords(session.plan.asOf)));
    const tools = [scans, intake(takeFiles, say.intake.again, session.hasSheets)];
    return showReport(content, session as PlannedSession, tools);
  }
  forgetFigures(content);
  content.replaceChildren(
    make(
      "main",
      { id: "plan" },
      empty(intake(takeFiles, say.intake.drop, false), session.reading && sheets(session as ReadSession)),
      cautions(session.words.cautions, []),
    ),
  );
}

function preview(read: Read): void {
  forgetFigures(content);
  content.replaceChildren(firstLook(read));
}

recallIso();
followColours();
keepChartsPrintable();
listenForDrops(takeFiles);
listenForPastes(takeFiles);
followOtherWindows(() => {
  if (inForce().plan !== null) tell(say.intake.elsewhere);
  document.getElementById("forget")?.parentElement?.replaceChildren(say.intake.elsewhere);
});
// whatever was asked of the engine by a click, nothing fails without a word
window.addEventListener("unhandledrejection", ({ reason }) => {
  if (!(reason instanceof Stopped)) tell(say.intake.failed(reason.message));
});
window.addEventListener("hashchange", takeLink);
openPage();
