import type { ColumnsFile, Plan, PolicyChoice, Reading } from "../src/index.ts";
import { choicesOfPlan } from "./embedded-choices.ts";
import { askPlan } from "./engine/ask-plan.ts";
import { ask } from "./engine/engine.ts";
import type { Read } from "./engine/messages.ts";
import type { NamedBytes } from "./intake/intake.ts";
import { todayHere } from "./months.ts";

/** What a plan is made from, besides the reader's own policy values. */
export interface AtHand {
  /** None where the plan came inside the page. */
  files: NamedBytes[];
  /** How columns are read, where the reader chose; null lets the engine recognise them. */
  columns: ColumnsFile | null;
  /** Values that an embedded plan was made with, beneath the reader's own. */
  underlying: PolicyChoice[];
}

export const NOTHING: AtHand = { files: [], columns: null, underlying: [] };

let atHand = NOTHING;
/** What came inside the page, whole. */
let inside: { plan: Plan; reading: Reading } | null = null;
/** What the engine still has of what was at hand. */
let known: AtHand | null = null;

/** What the next plan is made from. */
export const nowAtHand = (): AtHand => atHand;

/** Has the next plan made from this. */
export function takeInHand(taken: Partial<AtHand>): void {
  atHand = { ...atHand, ...taken };
}

/** Takes the plan that came inside the page, whose sheets are not at hand. */
export async function takeInside(text: string) {
  inside = JSON.parse(text) as { plan: Plan; reading: Reading };
  takeInHand({ underlying: choicesOfPlan(inside.plan) });
  const drawn = await ask("adopt", inside);
  known = atHand;
  return { ...inside, ...drawn, madeFrom: atHand, hasSheets: false };
}

/**
 * Has the engine plan from what is at hand, under the reader's choices.
 *
 * @param preview  is shown what the sheets say, where the engine first has to read them
 */
export async function planAtHand(choices: ReadonlyMap<string, string>, preview: (read: Read) => void) {
  const madeFrom = atHand;
  const underlying = madeFrom.underlying.filter(({ key }) => !choices.has(key));
  const own = [...choices].map(([key, value]) => ({ key, value }));
  const how = { choices: [...underlying, ...own], today: todayHere() };
  const hasSheets = madeFrom.files.length > 0;
  if (known !== madeFrom) {
    if (hasSheets) preview(await readSheets(madeFrom, how));
    else if (inside) await ask("adopt", inside);
    known = madeFrom;
  }
  return { ...(await askPlan(how)), madeFrom, hasSheets };
}

/** Goes back to what the plan in force was made from. The engine is to know both again: files are written and rows corrected of that. */
export async function goBackTo({ plan, madeFrom }: { plan: Plan | null; madeFrom: AtHand }): Promise<void> {
  atHand = madeFrom;
  known = null;
  if (plan === null) return;
  const fromSheets = madeFrom.files.length > 0;
  // asked for at once, so that whatever the reader asks for next comes after both
  await Promise.all([
    fromSheets && readSheets(madeFrom, { choices: choicesOfPlan(plan), today: todayHere() }),
    ask("adopt", { plan, reading: fromSheets ? null : inside!.reading }),
  ]);
  known = madeFrom;
}

function readSheets({ files, columns }: AtHand, how: { choices: PolicyChoice[]; today: number }): Promise<Read> {
  return ask("read", { files, columns, ...how });
}
