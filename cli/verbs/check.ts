import { basename, dirname } from "node:path";
import {
  checkJson,
  checkText,
  cleanSheets,
  cleanWorkbook,
  columnsFileOf,
  isoFromDay,
  jsonChunks,
  type Reading,
  setAsideCsv,
} from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { loadFleet, requireWholeReading } from "../load-fleet.ts";
import { note, print, stdoutSetting, suggest, typed } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeFiles } from "../write-files.ts";
import { writeOut } from "../write-out.ts";

/** Options of `check`, as given. */
export interface CheckOptions extends VerbOptions {
  writeColumns?: string;
  writeClean?: string;
}

/** How each sheet and column was read and every finding; nothing is forecast. Refused files are reported with the rest. */
export async function runCheck(inputs: readonly string[], options: CheckOptions): Promise<void> {
  const { reading, policy, paths, files, columns } = await loadFleet(inputs, options);
  const check = checkJson(reading, policy.asOf);
  if (options.out !== undefined) {
    const written = [
      { name: "check.json", chunks: jsonChunks(check) },
      { name: "set-aside.csv", chunks: [setAsideCsv(reading.setAside, reading.inputs)] },
    ];
    await writeOut(options.out, written, paths);
  }
  if (options.writeColumns !== undefined) {
    const text = `${JSON.stringify(columnsFileOf(files, columns), null, 2)}\n`;
    await writeFiles(dirname(options.writeColumns), [{ name: basename(options.writeColumns), chunks: [text] }], paths);
    note(`Written: ${options.writeColumns}. Edit it, then read with --columns ${options.writeColumns}.`);
  }
  if (options.writeClean !== undefined) {
    await writeClean(reading, options.writeClean, paths);
  }
  await print(options.json ? jsonChunks(check) : [checkText(reading, isoFromDay(policy.asOf), stdoutSetting())]);
  failOn(options.failOn ?? [], reading, null);
  requireWholeReading(reading, !options.json);
  suggest(
    reading.setAside.length > 0 && options.out === undefined
      ? `${typed(["wanecast", "check", ...inputs, "--out", "out"])} writes the rows set aside, to be corrected and given in again`
      : typed(["wanecast", "plan", ...inputs, "--out", "out"]),
  );
}

async function writeClean({ fleet }: Reading, folder: string, inputs: readonly string[]): Promise<void> {
  const sheets = cleanSheets(fleet).map(({ name, text }) => ({ name, chunks: [text] }));
  // a workbook without a tab would be none
  if (sheets.length === 0) return note(`No clean sheet was written to ${folder}: no row was used.`);
  await writeOut(folder, [...sheets, { name: "fleet.xlsx", chunks: [await cleanWorkbook(fleet)] }], inputs);
}
