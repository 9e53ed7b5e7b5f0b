import "./style/page.css";
import "./style/figure.css";
import "./style/table.css";
import "./style/form.css";
import "./style/print.css";
import type { Plan, Reading } from "../src/index.ts";
import { forgetFigures, keepChartsPrintable } from "./charts/figure.ts";
import { make } from "./dom.ts";
import { choicesOfPlan } from "./embedded-choices.ts";
import { ask } from "./engine/engine.ts";
import type { Planned } from "./engine/messages.ts";
import { dayWords, isoDates, setIsoDates } from "./format.ts";
import { intake, listenForDrops, type NamedBytes } from "./intake/intake.ts";
import { todayHere } from "./months.ts";
import { setPrintFooter } from "./print-footer.ts";
import { report } from "./report.ts";
import { cautions } from "./sections/cautions.ts";
import { empty } from "./sections/empty.ts";
import { sheets } from "./sections/sheets.ts";
import type { PlannedSession, Session } from "./session.ts";
import { say } from "./strings.ts";

const page = document.getElementById("page")!;
const status = make("p", { class: "status", role: "status" });
const content = make("div", { class: "report" });
page.append(make("a", { class: "skip", href: "#plan" }, say.skip), status, content);

let session: Session = {
  plan: null,
  reading: null as never,
  problems: [],
  before: null,
  hasSheets: true,
  choices: new Map(),
  words: { policy: [], cautions: [] },
};
/** Values that an embedded plan was made with, beneath the reader's own. */
let underlying: { key: string; value: string }[] = [];

function show(): void {
  const focused = document.activeElement?.id;
  forgetFigures(content);
  const parts =
    session.plan !== null
      ? report(session as PlannedSession, intake(takeFiles, say.intake.again), { set: setPolicy, reset, switchIso })
      : [
          make(
            "main",
            { id: "plan" },
            empty(intake(takeFiles, say.intake.drop)),
            session.reading && sheets(session, make("div")),
            cautions(session.words.cautions, []),
          ),
        ];
  content.replaceChildren(...parts);
  if (session.plan) setPrintFooter(say.printFooter(dayWords(session.plan.asOf)));
  if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
}

function tell(text: string): void {
  status.textContent = text;
}

async function takeFiles(files: NamedBytes[]): Promise<void> {
  if (files.length === 0) return tell(say.intake.nothing);
  tell(say.intake.working(files.length));
  underlying = [];
  await planned(() => ask("read", { files, choices: choices(), today: todayHere() }), true);
}

async function setPolicy(key: string, value: string): Promise<void> {
  if (value === "") session.choices.delete(key);
  else session.choices.set(key, value);
  await replan();
}

async function reset(): Promise<void> {
  session.choices.clear();
  await replan();
}

async function replan(): Promise<void> {
  tell(say.intake.replanning);
  await planned(() => ask("replan", { choices: choices(), today: todayHere() }), session.hasSheets);
}

const choices = () => [
  ...underlying.filter(({ key }) => !session.choices.has(key)),
  ...[...session.choices].map(([key, value]) => ({ key, value })),
];

async function planned(work: () => Promise<Planned>, hasSheets: boolean): Promise<void> {
  const fresh = hasSheets && !session.hasSheets;
  try {
    const { plan, reading, problems } = await work();
    const before = fresh || session.choices.size === 0 ? null : session.plan;
    session = { ...session, plan, reading, problems, before, hasSheets };
    show();
    tell(plan === null ? say.intake.noTable : say.intake.done(dayWords(plan.asOf)));
  } catch (error) {
    tell(say.intake.failed(error instanceof Error ? error.message : String(error)));
  }
}

function switchIso(): void {
  setIsoDates(!isoDates());
  show();
}

/** Opens with the plan that the program put into the page, or empty. */
async function open(): Promise<void> {
  keepChartsPrintable();
  listenForDrops(takeFiles);
  // Without its engine the page still shows a plan that came inside it.
  session.words = await ask("describe", {}).catch((error: Error) => {
    tell(say.intake.failed(error.message));
    return session.words;
  });
  const text = document.getElementById("wanecast-data")?.textContent;
  if (text) {
    const { plan, reading } = JSON.parse(text) as { plan: Plan; reading: Reading };
    underlying = choicesOfPlan(plan);
    session = { ...session, plan, reading, hasSheets: false };
    await ask("adopt", { plan, reading });
  }
  show();
}

open().catch((error: unknown) => tell(say.intake.failed(error instanceof Error ? error.message : String(error))));
