import { type SpawnSyncOptions, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach } from "vitest";

/** The program as it is built; `npm test` builds it first. */
export const PROGRAM = fileURLToPath(new URL("../../dist/wanecast.cjs", import.meta.url));
/** The invented fleet. */
export const SAMPLE = fileURLToPath(new URL("../../sample-data", import.meta.url));

/** Runs the program as a child, away from any terminal. */
export function wanecast(args: readonly string[], options: SpawnSyncOptions & { input?: string } = {}) {
  const env = { ...process.env, NO_COLOR: "", COLUMNS: "80", ...options.env };
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...args], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
    ...options,
    env,
  });
  return { code: status, stdout: String(stdout), stderr: String(stderr) };
}

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder of its own, with files, gone after the test. */
export function folderWith(files: Record<string, string> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), "wanecast-test-"));
  made.push(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}
