import { spawnSync } from "node:child_process";
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";
import { folderWith } from "../folders.ts";

/*
 * The README's sessions: blocks that start with "$ " and a command, then what it prints. All run in one folder that holds
 * the sample, one after another, so that a later one may look at what an earlier one wrote.
 * After a change of what is printed: UPDATE_README=1 npx vitest run --config tests/vitest.config.ts --project unit
 * tests/repository/quoted-sessions
 */

const ROOT = resolve(import.meta.dirname, "../..");
const README = join(ROOT, "README.md");
const SESSION = /^```console\n\$ (.*)\n([\s\S]*?)^```$/gm;

/** What a command prints on both streams, `wanecast` standing for the program as built. */
function printed(command: string, folder: string): string {
  const program = `wanecast() { "${process.execPath}" "${join(ROOT, "dist/wanecast.cjs")}" "$@"; }`;
  const env = { ...process.env, COLUMNS: "80", NO_COLOR: "1" };
  const { status, stdout } = spawnSync("sh", ["-c", `${program}; { ${command}; } 2>&1`], {
    cwd: folder,
    encoding: "utf8",
    env,
  });
  expect(status, command).toBe(0);
  return stdout.trimEnd();
}

it("the README's sessions print what stands below their commands", () => {
  const folder = folderWith();
  cpSync(join(ROOT, "sample-data"), join(folder, "sample-data"), { recursive: true });
  const readme = readFileSync(README, "utf8");
  let sessions = 0;
  const now = readme.replace(SESSION, (_, command: string) => {
    sessions++;
    return `\`\`\`console\n$ ${command}\n${printed(command, folder)}\n\`\`\``;
  });
  if (process.env.UPDATE_README) writeFileSync(README, now);
  else expect(readme).toBe(now);
  expect(sessions).toBeGreaterThan(6);
});
