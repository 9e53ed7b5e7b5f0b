import { readFileSync } from "node:fs";
import { jsonChunks, mentionsBeside, traceCsv, traceIds, traceJson, traceText } from "../../src/index.ts";
import { UsageError } from "../exit-codes.ts";
import { loadFleet, requireWholeReading } from "../load-fleet.ts";
import { print, stdoutSetting, suggest, typed } from "../print.ts";
import { readStandardInput } from "../read-standard-input.ts";
import type { ResultOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** Options of `trace`, as given. */
export interface TraceOptions extends ResultOptions {
  ids?: string;
}

/** Where a lot, serial, GTIN or order number is, and what it touches. */
export async function runTrace(args: readonly string[], options: TraceOptions): Promise<void> {
  const [first = "", ...rest] = args;
  const inputs = options.ids === undefined ? rest : args;
  if (options.ids === "-" && inputs.includes("-")) {
    throw new UsageError("Standard input (-) can be read once only: give the list or the sheets as a file.");
  }
  const ids = options.ids === undefined ? [first.trim()] : idsIn(options.ids);
  const blank = ids.find((id) => id === "" || id === "*");
  if (blank !== undefined) {
    throw new UsageError(`"${blank}" names nothing: give a lot, serial, GTIN or order number, or its start and *.`);
  }
  if (inputs.length === 0) throw new UsageError("trace needs the sheets after the ID: wanecast trace ID INPUT...");
  const { reading, policy, paths, files, columns } = await loadFleet(inputs, options);
  requireWholeReading(reading);
  const trace = traceIds(reading.fleet, policy, ids);
  const mentions = mentionsBeside(files, columns, reading, trace, policy.asOf);
  const json = () => jsonChunks(traceJson(trace, mentions, policy.asOf));
  if (options.out !== undefined) {
    const written = [
      { name: "trace.json", chunks: json() },
      { name: "trace.csv", chunks: [traceCsv(trace, mentions, policy.asOf)] },
    ];
    await writeOut(options.out, written, paths);
  }
  await print(options.json ? json() : [traceText(trace, mentions, policy.asOf, stdoutSetting())]);
  if (options.out === undefined) {
    const named = options.ids === undefined ? args : ["--ids", options.ids, ...args];
    suggest(`${typed(["wanecast", "trace", ...named, "--out", "out"])} writes the list, a line a place`);
  }
}

/** The identifiers of a recall notice's list: one a line, or separated by commas or semicolons. */
function idsIn(path: string): string[] {
  let text: string;
  try {
    text = path === "-" ? new TextDecoder().decode(readStandardInput()) : readFileSync(path, "utf8");
  } catch {
    throw new UsageError(`The list ${path} cannot be read; give a text file of lots or serials, one a line.`);
  }
  const ids = text
    .replace(/^\uFEFF/, "")
    .split(/[\r\n\t,;]+/)
    .map((id) => id.trim().replace(/^"(.*)"$/, "$1"));
  const named = [...new Set(ids.filter((id) => id !== ""))];
  if (named.length === 0) throw new UsageError(`The list ${path} names nothing; give lots or serials, one a line.`);
  return named;
}
