import { readFileSync } from "node:fs";
import {
  type ColumnsFile,
  dayFromIso,
  isoFromDay,
  openWorkbooks,
  type Policy,
  type PolicyChoice,
  parseColumnsFile,
  policyChoicesIn,
  type Reading,
  readSheets,
  resolvePolicy,
  type SheetFile,
} from "../src/index.ts";
import { InputRefused, UsageError } from "./exit-codes.ts";
import { readingNote } from "./memory-note.ts";
import { policyOptions } from "./policy-options.ts";
import { note } from "./print.ts";
import { clearProgress, showProgress } from "./progress.ts";
import { readInputs } from "./read-inputs.ts";
import { todayIso } from "./today.ts";
import type { SheetOptions } from "./verb-options.ts";

/** What came of the inputs: the fleet as read, the policy in force, and the paths that were read. */
export interface LoadedFleet {
  reading: Reading;
  policy: Policy;
  paths: string[];
  files: SheetFile[];
  /** How the planner chose columns to be read; null = as recognised. */
  columns: ColumnsFile | null;
}

/**
 * Reads the inputs under the policy of sheet and command line. Refused files are in the reading.
 *
 * @param earlier  what the same inputs gave under another policy: where sheets would be read no differently it is
 *                 handed on, so that its packs need not be fitted anew
 */
export async function loadFleet(
  inputs: readonly string[],
  options: SheetOptions,
  earlier: LoadedFleet | null = null,
): Promise<LoadedFleet> {
  const fromOptions = policyOptions(options);
  const { files, refused, paths, unread, again, renamed } = readInputs(inputs);
  if (earlier === null) {
    if (unread.length > 0) note(unreadNote(unread));
    if (again.length > 0) note(`Read once, though named twice: ${again.join(", ")}.`);
    for (const { path, name } of renamed) note(`Told as ${name}, since another file has its name: ${path}.`);
  }
  const warning = readingNote(files);
  if (warning !== null) note(warning);
  await openWorkbooks(files);
  const today = dayFromIso(todayIso()) ?? 0;
  const columns = options.columns === undefined ? null : columnsFrom(options.columns);
  const choices = [...policyChoicesIn(files, columns), ...fromOptions];
  const { policy, problems } = resolvePolicy(choices, today);
  const isUsed = ({ key, value }: PolicyChoice) =>
    value.trim() !== "" && !problems.some((problem) => problem.key === key && problem.value === value);
  const namesDay = choices.some((choice) => choice.key.trim().toLowerCase() === "as_of" && isUsed(choice));
  if (earlier === null && !namesDay) {
    note(`As of today, ${isoFromDay(today)}; --as-of DATE plans from another day.`);
  }
  if (earlier?.policy.asOf === policy.asOf && earlier.policy.dateOrder === policy.dateOrder) {
    return { ...earlier, policy };
  }
  showProgress(`Reading ${files.map(({ name }) => name).join(", ")} ...`);
  const reading = readSheets(files, { asOf: policy.asOf, dateOrder: policy.dateOrder, columns });
  clearProgress();
  return { reading: { ...reading, refused: [...refused, ...reading.refused] }, policy, paths, files, columns };
}

/** Sheets that lie deeper than was looked. */
function unreadNote(folders: readonly string[]): string {
  const [inner, them] =
    folders.length === 1 ? ["folder", "it as well if it belongs"] : ["folders", "them as well if they belong"];
  return `Not read: sheets in the inner ${inner} ${folders.join(", ")}; name ${them} to the fleet.`;
}

/** The columns file named by `--columns`. */
function columnsFrom(path: string): ColumnsFile {
  const remedy = "wanecast check INPUT... --write-columns FILE writes one.";
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch {
    throw new UsageError(`--columns ${path} cannot be read; ${remedy}`);
  }
  const parsed = parseColumnsFile(text);
  if ("problem" in parsed) throw new UsageError(`--columns ${path}: ${parsed.problem} Correct it; ${remedy}`);
  return parsed.columns;
}

/**
 * Stops where a file was refused or no table was found: a plan that misses a sheet buys wrongly.
 *
 * @param reported  true where a report that lists what was refused has just been printed, so that it is not said twice
 * @throws InputRefused
 */
export function requireWholeReading({ inputs, refused }: Reading, reported = false): void {
  if (refused.length > 0) {
    const count = refused.length === 1 ? "1 input" : `${refused.length} inputs`;
    if (reported) throw new InputRefused(`${count}; the report says why.`);
    throw new InputRefused(refused.map(({ file, code, message }) => `${file}: ${message} [${code}]`).join("\n"));
  }
  if (inputs.length === 0)
    throw new InputRefused(
      `No table was found in the inputs; ${reported ? "the findings say why" : "`wanecast check` says how each was read"}.`,
    );
}
