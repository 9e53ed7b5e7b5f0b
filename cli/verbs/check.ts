import { checkJson, checkText, isoFromDay, jsonChunks, setAsideCsv } from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { loadFleet, requireWholeReading } from "../load-fleet.ts";
import { note, print, stdoutSetting } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeFiles } from "../write-files.ts";

/** How each sheet and column was read and every finding; nothing is forecast. Refused files are reported with the rest. */
export async function runCheck(inputs: readonly string[], options: VerbOptions): Promise<void> {
  const { reading, policy, paths } = await loadFleet(inputs, options);
  const check = checkJson(reading, policy.asOf);
  if (options.out !== undefined) {
    const files = [
      { name: "check.json", chunks: jsonChunks(check) },
      { name: "set-aside.csv", chunks: [setAsideCsv(reading.setAside, reading.inputs)] },
    ];
    writeFiles(options.out, files, paths);
    note(`Written to ${options.out}: ${files.map(({ name }) => name).join(", ")}.`);
  }
  await print(options.json ? jsonChunks(check) : [checkText(reading, isoFromDay(policy.asOf), stdoutSetting())]);
  failOn(options.failOn ?? [], reading, null);
  requireWholeReading(reading);
}
