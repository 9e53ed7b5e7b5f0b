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
import { followStages, Stopped } from "./engine/engine.ts";
import type { Read } from "./engine/messages.ts";
import { dayWords, isoDates, setIsoDates } from "./format.ts";
import { intake, listenForDrops, listenForPastes } from "./intake/intake.ts";
import { keepChoice, keptChoice } from "./kept-choices.ts";
import { planner } from "./planner.ts";
import { setPrintFooter } from "./print-footer.ts";
import { showReport } from "./report.ts";
import { cautions } from "./sections/cautions.ts";
import { empty } from "./sections/empty.ts";
import { firstLook } from "./sections/first-look.ts";
import { scanBox } from "./sections/scan-box.ts";
import { sheets } from "./sections/sheets.ts";
import type { PlannedSession, ReadSession, Session } from "./session.ts";
import { say } from "./strings.ts";

const page = document.getElementById("page")!;
const status = make("p", { class: "status", role: "status" });
const content = make("div", { class: "report" });
page.replaceChildren(make("a", { class: "skip", href: "#plan" }, say.skip), status, content);

const plans = planner(
  { show, preview, tell, mention, busy },
  document.getElementById("wanecast-data")?.textContent ?? null,
);

const scans = scanBox(plans.addFile);

async function show(session: Session): Promise<void> {
  if (session.plan !== null) {
    setPrintFooter(say.printFooter(dayWords(session.plan.asOf)));
    const tools = [scans, intake(plans.takeFiles, say.intake.again, session.hasSheets)];
    return showReport(content, session as PlannedSession, { ...plans, switchIso }, tools);
  }
  forgetFigures(content);
  content.replaceChildren(
    make(
      "main",
      { id: "plan" },
      empty(intake(plans.takeFiles, say.intake.drop, false), session.reading && sheets(session as ReadSession, plans)),
      cautions(session.words.cautions, []),
    ),
  );
}

function preview(read: Read): void {
  forgetFigures(content);
  content.replaceChildren(firstLook(read));
}

function tell(text: string): void {
  status.textContent = text;
}

const MENTION_MS = 8000;

function mention(text: string, seeAlso?: { href: string; text: string }): void {
  tell(text);
  if (seeAlso) status.append(" ", make("a", { href: seeAlso.href }, seeAlso.text));
  const said = status.textContent;
  setTimeout(() => {
    if (status.textContent === said) tell("");
  }, MENTION_MS);
}

function busy(text: string, stop: () => void): void {
  const step = make("span");
  const steps = say.intake.steps;
  followStages((name) => {
    const at = steps.findIndex((one) => one.stage === name);
    if (at >= 0) step.textContent = say.intake.step(at + 1, steps.length, steps[at]!.does);
  });
  status.replaceChildren(`${text} `, step, make("button", { type: "button", click: stop }, say.intake.stop));
}

const ISO = "iso-dates";
setIsoDates(keptChoice(ISO) !== null);

function switchIso(): void {
  setIsoDates(!isoDates());
  keepChoice(ISO, isoDates() ? ISO : null);
  plans.showAgain();
}

followColours();
keepChartsPrintable();
listenForDrops(plans.takeFiles);
listenForPastes(plans.takeFiles);
// whatever was asked of the engine by a click, nothing fails without a word
window.addEventListener("unhandledrejection", ({ reason }) => {
  if (!(reason instanceof Stopped)) tell(say.intake.failed(reason.message));
});
window.addEventListener("hashchange", () => plans.takeLink());
plans.open();
