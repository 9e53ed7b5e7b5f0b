import { datesCsv, datesText, jsonChunks, makeDates, makePlan } from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { loadFleet, requireWholeReading } from "../load-fleet.ts";
import { print, stdoutSetting, suggest, typed } from "../print.ts";
import { showProgress } from "../progress.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** Dated stock by month and place, what lapses, crowded months, swaps and moves. */
export async function runDates(inputs: readonly string[], options: VerbOptions): Promise<void> {
  const { reading, policy, paths } = await loadFleet(inputs, options);
  requireWholeReading(reading);
  showProgress("Forecasting how dated stock lasts ...");
  const report = makeDates(reading, policy);
  if (options.out !== undefined) {
    await writeOut(options.out, [{ name: "dates.csv", chunks: [datesCsv(report)] }], paths);
  }
  await print(options.json ? jsonChunks(report) : [datesText(report, stdoutSetting())]);
  suggest(`${typed(["wanecast", "orders", ...inputs])} says what to buy by which day`);
  const conditions = options.failOn ?? [];
  // packs and orders are forecast only where a condition asks for them
  const askPlan = conditions.some((condition) => condition === "late" || condition === "short");
  failOn(conditions, reading, askPlan ? makePlan(reading, policy) : report);
}
