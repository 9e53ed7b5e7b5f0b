import { type SpawnSyncOptions, spawnSync } from "node:child_process";
import { copyFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { folderWith } from "../folders.ts";

/** The program as it is built; `npm test` builds it first. */
export const PROGRAM = fileURLToPath(new URL("../../dist/wanecast.cjs", import.meta.url));
/** The invented fleet. */
export const SAMPLE = fileURLToPath(new URL("../../sample-data", import.meta.url));

/** What is said of the sample's folder: the messy workbook lies in a folder inside it. */
export const SAMPLE_NOTE = `Not read: sheets in the inner folder ${join(SAMPLE, "messy")}; name it as well if it belongs to the fleet.\n`;

/** What every text that forecasts or traces ends with, at 80 columns. */
export const CAUTIONS = `Cautions
- This is a planning aid only. It does not test, clear or condemn any device.
- Whether a device may be used is decided by its own self-test, its instructions
  for use, local protocol and licensed biomedical staff.
- A pack that fails a test, is swollen, is damaged or is recalled comes out now,
  whatever the forecast says.
- Past expiry is past expiry: no forecast makes an expired unit usable.
- The forecasts rest on the readings given; what the sheets leave out, the plan
  cannot see.
`;

/** Runs the program, or a copy of it, as a child, away from any terminal. */
export function wanecast(
  args: readonly string[],
  { program = PROGRAM, ...options }: SpawnSyncOptions & { input?: string; program?: string } = {},
) {
  const env = { ...process.env, NO_COLOR: "", COLUMNS: "80", ...options.env };
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
    ...options,
    env,
  });
  return { code: status, stdout: String(stdout), stderr: String(stderr) };
}

/** Runs the program in a pipe whose reader leaves after a few bytes. */
export function wanecastIntoHead(args: readonly string[]) {
  const { stdout, stderr } = spawnSync("sh", ["-c", '"$@" | head -c 5', "sh", process.execPath, PROGRAM, ...args], {
    encoding: "utf8",
  });
  return { stdout, stderr };
}

/** A copy of the program with only these of its files beside it. */
export function lonelyProgram(files: readonly string[]): string {
  const folder = folderWith();
  for (const name of ["wanecast.cjs", "rolldown-runtime.cjs", ...files]) {
    copyFileSync(join(PROGRAM, "..", name), join(folder, name));
  }
  return join(folder, "wanecast.cjs");
}

let elsewhere: ReturnType<typeof wanecast> | undefined;

/** `plan --json` of the invented fleet, its files named in turned order, far east of Greenwich: run once a worker. */
export function samplePlannedElsewhere(): ReturnType<typeof wanecast> {
  const names = readdirSync(SAMPLE).filter((name) => name.endsWith(".csv"));
  const paths = names.reverse().map((name) => join(SAMPLE, name));
  elsewhere ??= wanecast(["plan", ...paths, "--json"], { env: { TZ: "Pacific/Auckland" } });
  return elsewhere;
}
