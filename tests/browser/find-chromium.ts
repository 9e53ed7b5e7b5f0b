import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  export interface ProvidedContext {
    chromiumPath: string;
  }
}

const INSTALLED = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-headless-shell",
  "/usr/bin/google-chrome",
  "/usr/bin/chromium-browser",
];

/**
 * Finds a browser that starts, once for all browser tests: CHROME_PATH, then one that the system has, then the one
 * that comes with the development packages, unpacked under node_modules/.cache.
 *
 * @throws Error with everything that was tried, where none starts
 */
export default async function setup(project: TestProject): Promise<void> {
  project.provide("chromiumPath", await findChromium());
}

export async function findChromium(): Promise<string> {
  const tried: string[] = [];
  for (const path of [process.env.CHROME_PATH, ...INSTALLED]) {
    if (path && existsSync(path) && starts(path, tried)) return path;
  }
  // A half-written copy, as an interrupted first run leaves it, is thrown away once.
  for (const attempt of [1, 2]) {
    const path = await unpacked(attempt === 2);
    if (starts(path, tried)) return path;
  }
  throw new Error(
    `No browser starts here, so the browser tests cannot run. Tried:\n${tried.join("\n")}\n` +
      "Install Chromium, or set CHROME_PATH to one that starts.",
  );
}

function starts(path: string, tried: string[]): boolean {
  const run = spawnSync(path, ["--version"], { encoding: "utf8", timeout: 30_000 });
  if (run.status === 0) return true;
  tried.push(`  ${path}: ${(run.stderr || run.error?.message || `exit code ${run.status}`).trim().split("\n")[0]}`);
  return false;
}

/** The packaged browser, in a folder named for its version: the package itself would reuse whatever lies in the temporary folder. */
async function unpacked(afresh: boolean): Promise<string> {
  const require = createRequire(import.meta.url);
  const entry = require.resolve("@sparticuz/chromium");
  const folder = join(process.cwd(), "node_modules/.cache", `chromium-${versionOf(entry)}`);
  if (afresh) rmSync(folder, { recursive: true, force: true });
  const path = join(folder, "chromium");
  if (existsSync(path)) return path;
  mkdirSync(folder, { recursive: true });
  const before = process.env.TMPDIR;
  process.env.TMPDIR = folder;
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    return await packaged.executablePath();
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}

/** Version in the package.json of the packaged browser. */
function versionOf(entry: string): string {
  const root = entry.slice(0, entry.lastIndexOf("@sparticuz/chromium"));
  return (JSON.parse(readFileSync(join(root, "@sparticuz/chromium/package.json"), "utf8")) as { version: string })
    .version;
}
