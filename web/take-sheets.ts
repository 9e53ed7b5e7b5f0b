import { type ColumnsFile, withDistinctNames } from "../src/index.ts";
import { nowAtHand, takeInHand } from "./at-hand.ts";
import type { CellChange, RowPlace } from "./engine/correct-row.ts";
import { ask } from "./engine/engine.ts";
import { type NamedBytes, wantedBeside } from "./intake/intake.ts";
import { todayHere } from "./months.ts";
import { inForce, planFrom, replan } from "./plan-in-force.ts";
import { mention, tell } from "./status.ts";
import { say } from "./strings.ts";

const SMALL_FILE = 20_000;

/** Takes what the reader hands over: sheets as a rule, in the place of those at hand or beside them. */
export async function takeFiles(dropped: NamedBytes[]): Promise<void> {
  const taken = withDistinctNames(dropped);
  if (taken.length === 0) return tell(say.intake.nothing);
  if ((await tookColumns(taken)) || (await tookPolicy(taken))) return;
  const { plan, hasSheets } = inForce();
  if (plan !== null && hasSheets && wantedBeside()) return addFiles(taken);
  takeInHand({ files: taken, columns: null, underlying: [] });
  await planFrom(say.intake.working(taken.length), null);
}

/** A columns file that was dropped says how the columns of the sheets at hand are read. */
async function tookColumns(taken: NamedBytes[]): Promise<boolean> {
  const [file] = taken;
  if (!inForce().hasSheets || !file || taken.length > 1 || !file.name.endsWith(".json")) return false;
  const found = await ask("columnsIn", { text: new TextDecoder().decode(file.bytes) });
  if ("problem" in found) tell(found.problem);
  else await setColumns(found.columns);
  return true;
}

/** A policy sheet dropped on a plan changes the assumptions and leaves the fleet as it is. */
async function tookPolicy(taken: NamedBytes[]): Promise<boolean> {
  if (inForce().plan === null || taken.length > 1 || taken[0]!.bytes.length > SMALL_FILE) return false;
  const found = await ask("choicesIn", { files: taken, today: todayHere() });
  if (found === null) return false;
  for (const { key, value } of found) inForce().choices.set(key, value);
  if (await replan()) mention(say.intake.taken(found.length, "file"));
  return true;
}

/** Puts sheets among the others, in the place of those of the same name. */
export async function addFiles(added: NamedBytes[]): Promise<void> {
  if (!inForce().hasSheets) return tell(say.sheets.scan.needsSheets);
  const names = new Set(added.map(({ name }) => name));
  const others = nowAtHand().files.filter(({ name }) => !names.has(name));
  takeInHand({ files: [...others, ...added] });
  await replan();
}

export async function setColumns(columns: ColumnsFile): Promise<void> {
  takeInHand({ columns });
  await replan();
}

/** Sheets as they stood before a row of theirs was corrected, by what became of them. */
const uncorrected = new WeakMap<NamedBytes, NamedBytes>();

/** Reads a row with other cells than its sheet has. */
export async function correct(row: RowPlace, changes: CellChange[]): Promise<void> {
  const before = nowAtHand().files.find(({ name }) => name === row.file)!;
  const corrected = { ...before, ...(await ask("correct", { row, changes })) };
  uncorrected.set(corrected, before);
  await addFiles([corrected]);
}

/** The sheet of the last correction, as it stood before. */
export function beforeCorrection(): NamedBytes | undefined {
  return nowAtHand()
    .files.flatMap((file) => uncorrected.get(file) ?? [])
    .at(-1);
}
