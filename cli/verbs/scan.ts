import { readFileSync } from "node:fs";
import {
  checkJson,
  checkText,
  cleanSheets,
  dayFromIso,
  isoFromDay,
  jsonChunks,
  policyChoicesIn,
  readScans,
  resolvePolicy,
} from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { policyOptions } from "../policy-options.ts";
import { note, print, stdoutSetting } from "../print.ts";
import { readInputs } from "../read-inputs.ts";
import { todayIso } from "../today.ts";
import type { VerbOptions } from "../verb-options.ts";

/** Label scans from standard input, one a line, to dated-stock rows; sheets given with them name the products. */
export async function runScan(inputs: readonly string[], options: VerbOptions): Promise<void> {
  const { files } = readInputs(inputs);
  const choices = [...policyChoicesIn(files), ...policyOptions(options)];
  const { policy } = resolvePolicy(choices, dayFromIso(todayIso()) ?? 0);
  const scans = { name: "-", bytes: new Uint8Array(readFileSync(0)) };
  const reading = readScans(scans, { asOf: policy.asOf, dateOrder: policy.dateOrder }, files);
  if (options.json) await print(jsonChunks(checkJson(reading, policy.asOf)));
  else {
    await print(cleanSheets(reading.fleet).map(({ text }) => text));
    note(checkText(reading, isoFromDay(policy.asOf), { width: stdoutSetting().width }));
  }
  failOn(options.failOn ?? [], reading, null);
}
