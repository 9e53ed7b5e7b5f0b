import { InputRefused, UsageError } from "../exit-codes.ts";
import { loadPlan } from "../load-plan.ts";
import { pageWith } from "../page-template.ts";
import { note, print } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeFiles } from "../write-files.ts";

/**
 * The self-contained chart page with the plan and the fleet's rows inside, into --out or onto stdout.
 *
 * @param makePage  what makes the page: null for a fleet too large for one
 */
export async function runPage(inputs: readonly string[], options: VerbOptions, makePage = pageWith): Promise<void> {
  if (options.out === undefined && process.stdout.isTTY) {
    throw new UsageError("The page is too long for a terminal: give --out FOLDER, or redirect the output into a file.");
  }
  const { reading, plan, paths } = await loadPlan(inputs, options);
  const page = makePage(plan, reading);
  if (page === null) throw new InputRefused("The fleet is too large for one page: give the sheets of a part of it.");
  if (options.out === undefined) return print([page]);
  await writeFiles(options.out, [{ name: "page.html", chunks: [page] }], paths);
  note(`Written to ${options.out}: page.html. It holds the fleet's rows: pass it on as you would the sheets.`);
}
