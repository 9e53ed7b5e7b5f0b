import { fitsToProve, jsonChunks, prove, proveJson, proveText } from "../../src/index.ts";
import { fitInThreads } from "../fit-threads.ts";
import { loadFleet, requireWholeReading } from "../load-fleet.ts";
import { warnOfMemory } from "../memory-note.ts";
import { print, stdoutSetting } from "../print.ts";
import { showProgress } from "../progress.ts";
import type { ResultOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** Options of `prove`, as given. */
export interface ProveOptions extends ResultOptions {
  monthsBack?: number[];
}

/** Half a year, one year and two: long enough for ends to come, short enough for some history to remain. */
const USUAL_MONTHS_BACK = [6, 12, 24];

/** Hides the fleet's recent history, forecasts it, and scores the forecasts. */
export async function runProve(inputs: readonly string[], options: ProveOptions): Promise<void> {
  const { reading, policy, paths } = await loadFleet(inputs, options);
  requireWholeReading(reading);
  warnOfMemory(reading, 0);
  const monthsBack = options.monthsBack ?? USUAL_MONTHS_BACK;
  await fitInThreads(() => fitsToProve(reading.fleet, policy, monthsBack));
  showProgress(`Forecasting from what was known ${monthsBack.join(", ")} months ago ...`);
  const proof = prove(reading.fleet, policy, monthsBack);
  if (options.out !== undefined) {
    await writeOut(options.out, [{ name: "prove.json", chunks: jsonChunks(proveJson(proof)) }], paths);
  }
  await print(options.json ? jsonChunks(proveJson(proof)) : [proveText(proof, stdoutSetting())]);
}
