import type { Plan, Reading } from "../src/index.ts";
import { goBackTo, NOTHING, nowAtHand, planAtHand } from "./at-hand.ts";
import { Stopped } from "./engine/engine.ts";
import type { Read } from "./engine/messages.ts";
import { dayWords } from "./format.ts";
import { keepWork } from "./kept-work.ts";
import { newestInLine } from "./newest-in-line.ts";
import type { Session } from "./session.ts";
import { busy, mention, tell } from "./status.ts";
import { say } from "./strings.ts";

/** How a session is shown. */
export interface Stage {
  show: (session: Session) => Promise<void>;
  /** Shows what was read, while the forecast is being made. */
  preview: (read: Read) => void;
}

let stage: Stage;
let session: Session = {
  plan: null,
  reading: null,
  readings: new Map(),
  behind: null,
  problems: [],
  before: null,
  kept: false,
  hasSheets: true,
  madeFrom: NOTHING,
  choices: new Map(),
  words: { policy: [], sheets: [], cautions: [] },
};

/** The reader's choices that the plan in force was made with. */
let chosen: ReadonlyMap<string, string> = new Map();

/** Says where what is in force is shown. */
export function showOn(there: Stage): void {
  stage = there;
}

/** The plan in force, with all that is shown of it. */
export const inForce = (): Session => session;

/** Changes what is shown, once it is shown again. */
export function change(changes: Partial<Session>): void {
  session = { ...session, ...changes };
}

export const show = (): Promise<void> => stage.show(session);

const inLine = newestInLine();

/** Plans anew with what was changed; whether a plan came of it. */
export function replan(): Promise<boolean> {
  return planFrom(say.intake.replanning, session.plan);
}

/**
 * Plans from what was taken in hand: says `text` meanwhile, and compares with `before`, should the reader have kept no
 * plan for it. What comes to nothing leaves all that is at hand to newer work that waits, unless the reader stopped it.
 *
 * @param isKept  all that it is made from is what this browser keeps
 */
export function planFrom(text: string, before: Plan | null, isKept = false): Promise<boolean> {
  return inLine(async (isNewest) => {
    busy(text);
    // those of the reader's that come meanwhile are for the next plan
    const choices = new Map(session.choices);
    try {
      const planned = await planAtHand(choices, preview);
      if (planned.plan === null && session.plan !== null) {
        if (isNewest()) await tellNoPlan(planned.reading);
      } else {
        change({ ...planned, before: session.kept ? session.before : before });
        chosen = choices;
        await showPlanned(planned, isKept);
      }
      return planned.plan !== null;
    } catch (error) {
      if (isNewest() || error instanceof Stopped) await tellFailure(error as Error);
      return false;
    }
  });
}

function preview(read: Read): void {
  const planFollows = read.reading.inputs.length > 0 && read.reading.refused.length === 0;
  if (session.plan === null && planFollows) stage.preview(read);
}

async function showPlanned({ plan, reading }: { plan: Plan | null; reading: Reading }, isKept: boolean): Promise<void> {
  const { files, columns } = nowAtHand();
  // while the page is drawn; what is said to be ready is found by a reload right after it
  const kept = isKept || keepWork({ files, columns, choices: [...session.choices] });
  await show();
  await kept;
  if (plan === null) {
    tell(say.intake.noPlan(reading.inputs.length > 0));
    document.getElementById("sheets-heading")?.focus();
  } else {
    mention(say.intake.done(dayWords(plan.asOf)), session.before !== null);
  }
}

/** Says why no plan came of the sheets; the plan in force stays. */
async function tellNoPlan({ inputs, refused }: Reading): Promise<void> {
  const known = goBackTo(session);
  const why = refused.map(({ file, message }) => `${file}: ${message}`);
  tell(say.intake.noPlanAnew(inputs.length > 0, why));
  await known;
}

/** Says that the work failed, or that the reader stopped it; the plan in force stays. */
async function tellFailure(error: Error): Promise<void> {
  const known = goBackTo(session);
  // what was read stands there for a plan that does not come, and what was chosen for it: back to before
  change({ choices: new Map(chosen) });
  await show();
  const stopped = session.plan === null ? say.intake.stoppedFirst : say.intake.stopped;
  tell(error instanceof Stopped ? stopped : say.intake.failed(error.message));
  await known.catch(() => {});
}
