import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { MUTANTS } from "./mutants.ts";

/*
 * Breaks one line after another in a copy of the tree, and tells for each whether a test noticed. Exit code 1 where one
 * went unnoticed. Words after the command choose files: `npm run mutants -- orders`.
 */

const root = process.cwd();
const copy = mkdtempSync(join(tmpdir(), "wanecast-mutants-"));
process.on("exit", () => rmSync(copy, { recursive: true, force: true }));
const tracked = execFileSync("git", ["ls-files"], { encoding: "utf8" }).trim().split("\n");
for (const file of tracked) cpSync(join(root, file), join(copy, file));
for (const folder of ["node_modules", "dist"]) symlinkSync(join(root, folder), join(copy, folder));

const config = ["--config", "tests/vitest.config.ts", "--project", "unit", "--bail", "1", "--reporter", "dot"];

/** A broken line that makes a loop endless is noticed by whoever waits. */
const PATIENCE_MS = 180_000;

/** The titles of tests that failed; null where all passed. */
function failed(tests: string): string[] | null {
  const args = [join(root, "node_modules/vitest/vitest.mjs"), "run", ...config, ...tests.split(" ")];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    cwd: copy,
    encoding: "utf8",
    timeout: PATIENCE_MS,
    env: { ...process.env, NO_COLOR: "1", FORCE_COLOR: "" },
  });
  return status === 0 ? null : [...`${stdout}${stderr}`.matchAll(/^ FAIL .* > (.*)$/gm)].map(([, title]) => title!);
}

const chosen = process.argv.slice(2);
const mutants = MUTANTS.filter(({ file }) => chosen.length === 0 || chosen.some((word) => file.includes(word)));
for (const tests of new Set(mutants.map((mutant) => mutant.tests))) {
  if (failed(tests) !== null) throw new Error(`${tests} fails without any line broken.`);
}
let unnoticed = 0;
for (const { file, from, to, tests } of mutants) {
  const path = join(copy, file);
  const text = readFileSync(path, "utf8");
  if (text.split(from).length !== 2) throw new Error(`${file} holds "${from}" ${text.split(from).length - 1} times.`);
  writeFileSync(
    path,
    text.replace(from, () => to),
  );
  const noticed = failed(tests);
  writeFileSync(path, text);
  if (noticed === null) unnoticed++;
  console.log(`${noticed === null ? "UNNOTICED" : "noticed"}  ${file}: ${from} -> ${to}`);
  if (noticed !== null)
    console.log(`           by "${noticed[0] ?? "a file that could not be loaded, or a wait without end"}"`);
}
console.log(`${mutants.length - unnoticed} of ${mutants.length} broken lines noticed`);
process.exitCode = unnoticed === 0 ? 0 : 1;
