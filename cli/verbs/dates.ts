import { datesCsv, datesText, jsonChunks } from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { loadPlan } from "../load-plan.ts";
import { planPart } from "../plan-part.ts";
import { note, print, stdoutSetting } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeFiles } from "../write-files.ts";

/** Dated stock by month, crowded months, swaps and moves. */
export async function runDates(inputs: readonly string[], options: VerbOptions): Promise<void> {
  const { reading, plan, paths } = await loadPlan(inputs, options);
  if (options.out !== undefined) {
    writeFiles(options.out, [{ name: "dates.csv", chunks: [datesCsv(plan)] }], paths);
    note(`Written to ${options.out}: dates.csv.`);
  }
  const json = () => jsonChunks(planPart(plan, ["datedStock", "crowdedMonths", "swapCalendar", "moves"]));
  await print(options.json ? json() : [datesText(plan, stdoutSetting())]);
  failOn(options.failOn ?? [], reading, plan);
}
