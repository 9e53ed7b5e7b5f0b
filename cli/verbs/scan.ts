import { existsSync } from "node:fs";
import { join } from "node:path";
import { checkJson, datedStockCsv, jsonChunks, readScans, scanText, setAsideCsv } from "../../src/index.ts";
import { UsageError } from "../exit-codes.ts";
import { failOn } from "../fail-on.ts";
import { loadFleet, requireWholeReading } from "../load-fleet.ts";
import { note, print, stdoutSetting, suggest, typed } from "../print.ts";
import { readStandardInput } from "../read-standard-input.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** The sheet that scans become: it has the name that a fleet's own has. */
const STOCK = "dated_stock.csv";

/** Label scans from standard input, one a line, to dated-stock rows; sheets given with them name the products. */
export async function runScan(inputs: readonly string[], options: VerbOptions): Promise<void> {
  if (inputs.includes("-")) {
    throw new UsageError("Standard input (-) holds the scans: give the sheets that name the products as files.");
  }
  if (options.out !== undefined && existsSync(join(options.out, STOCK))) {
    // most likely the fleet's own sheet, which these scans are only a part of
    throw new UsageError(`${join(options.out, STOCK)} is there already; choose another folder, or move it away.`);
  }
  const { reading: sheets, policy, files, columns, paths } = await loadFleet(inputs, options);
  if (inputs.length > 0) requireWholeReading(sheets);
  if (process.stdin.isTTY) note("Reading scans, one a line; end them with Ctrl-D on a line of its own.");
  const scans = { name: "-", bytes: readStandardInput() };
  const reading = readScans(scans, { asOf: policy.asOf, dateOrder: policy.dateOrder, columns }, files);
  const csv = datedStockCsv(reading.fleet);
  if (options.out !== undefined) {
    const written = [
      { name: STOCK, chunks: [csv] },
      { name: "set-aside.csv", chunks: [setAsideCsv(reading.setAside, reading.inputs)] },
    ];
    await writeOut(options.out, written, paths);
  }
  if (options.json) await print(jsonChunks(checkJson(reading, policy.asOf)));
  else {
    await print([csv]);
    note(scanText(reading, { width: stdoutSetting().width }).trimEnd());
  }
  if (options.out !== undefined) {
    suggest(`${typed(["wanecast", "dates", ...inputs, join(options.out, STOCK)])} counts them in`);
  }
  failOn(options.failOn ?? [], reading, null);
}
