// Reads 100,000 made-up sheets with bytes changed, cut and doubled: npm run bench -- fuzz
import fc from "fast-check";
import { sheetBytes } from "../sheets/fuzz-sheets.ts";
import { readingFault } from "../sheets/reading-fault.ts";
import { lineOf } from "./report.ts";

const RUNS = 100_000;
const SLOWEST_SECONDS = 2;

let slowestMs = 0;
const from = performance.now();
const found = fc.check(
  fc.property(sheetBytes, (bytes) => {
    const start = performance.now();
    const fault = readingFault(bytes);
    slowestMs = Math.max(slowestMs, performance.now() - start);
    if (fault !== null) throw new Error(fault);
  }),
  { seed: 20261102, numRuns: RUNS },
);

console.log(`${found.numRuns} sheets in ${((performance.now() - from) / 1000).toFixed(0)} s`);
if (found.failed) console.log(fc.defaultReportMessage(found));
const slowest = { what: "slowest sheet", figure: slowestMs / 1000, unit: "s", bar: SLOWEST_SECONDS };
console.log(lineOf(slowest));
if (found.failed || slowest.figure > slowest.bar) process.exitCode = 1;
