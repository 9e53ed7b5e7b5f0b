// How long `dates` takes beside the bare read of its sheets: npm run bench -- dates
import { createReadStream, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { median } from "simple-statistics";
import { readInputs } from "../../cli/read-inputs.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { datesText, dayFromIso, makeDates, readSheets } from "../../src/index.ts";
import { datedFleet } from "./dated-fleet.ts";

const PLACES = 2_000;
const UNITS = 60_000;
/** As many as the sheets' bench takes: of three, the middle one swings by a fifth with the machine. */
const ROUNDS = 7;
/** Times the bare read that `dates` may take. */
const BAR = 4;

void run();

async function run(): Promise<void> {
  const asOf = dayFromIso("2026-11-01")!;
  const folder = mkdtempSync(join(tmpdir(), "wanecast-bench-"));
  try {
    const paths = datedFleet(PLACES, UNITS, asOf).map(({ name, text }) => {
      const path = join(folder, name);
      writeFileSync(path, text);
      return { name, path };
    });
    const bare: number[] = [];
    const parts: number[][] = [];
    // in turns, so that a slow spell of the machine falls on both; the first round warms up
    for (let round = 0; round <= ROUNDS; round++) {
      const read = await timeOf(() => bareRead(paths));
      const dates = datesParts(paths, asOf);
      if (round === 0) continue;
      bare.push(read);
      parts.push(dates);
    }
    const [reading, report, text] = [0, 1, 2].map((part) => median(parts.map((times) => times[part]!)));
    const ratios = parts.map((times, round) => times.reduce((a, b) => a + b, 0) / bare[round]!);
    const ratio = median(ratios);
    const ms = (time: number) => `${time.toFixed(0)} ms`;
    console.log(`${UNITS} dated units over ${PLACES} places, medians of ${ROUNDS} rounds`);
    console.log(
      `bare read ${ms(median(bare))}; dates: sheets ${ms(reading!)}, report ${ms(report!)}, text ${ms(text!)}`,
    );
    console.log(
      `dates / bare read: ${ratio.toFixed(2)} (${Math.min(...ratios).toFixed(2)} to ${Math.max(...ratios).toFixed(2)}), bar ${BAR}`,
    );
    if (ratio > BAR) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function timeOf(work: () => Promise<void>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

/** Every sheet streamed, its rows named by the header and dropped. */
async function bareRead(paths: readonly { path: string }[]): Promise<void> {
  for (const { path } of paths) {
    await new Promise<void>((resolve, reject) => {
      Papa.parse<Record<string, string>>(createReadStream(path), {
        header: true,
        step: () => {},
        complete: () => resolve(),
        error: reject,
      });
    });
  }
}

/** Milliseconds of what `dates` does, from files to text: sheets read, report made, text laid out. */
function datesParts(paths: readonly { path: string }[], asOf: number): number[] {
  const times = [performance.now()];
  const { files } = readInputs(paths.map(({ path }) => path));
  const reading = readSheets(files, { asOf, dateOrder: null });
  times.push(performance.now());
  const report = makeDates(reading, defaultPolicy(asOf));
  times.push(performance.now());
  const text = datesText(report, { width: 100 });
  times.push(performance.now());
  const read = report.datedStock.reduce((sum, { quantity }) => sum + quantity, 0);
  if (read !== UNITS || text === "") throw new Error(`${read} of ${UNITS} units were read`);
  return times.slice(1).map((time, part) => time - times[part]!);
}
