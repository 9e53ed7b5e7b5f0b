import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { makeProgram } from "../../cli/program.ts";
import { folderWith } from "../folders.ts";
import { wanecast } from "./run-wanecast.ts";

const run = (shell: string, args: readonly string[]) => spawnSync(shell, args, { encoding: "utf8" });
const has = (shell: string) => run(shell, ["-c", "exit 0"]).status === 0;

/** A script saved as a file; its path. */
const saved = (shell: string) => join(folderWith({ script: wanecast(["completion", shell]).stdout }), "script");

/** What bash offers at the end of a line. */
function bashOffers(script: string, words: readonly string[]): string[] {
  // outside a completion there is no compopt
  const ask = `compopt() { :; }; source "$0"; COMP_WORDS=(wanecast "$@"); COMP_CWORD=$#; _wanecast; echo "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = run("bash", ["-c", ask, script, ...words]);
  expect(stderr).toBe("");
  return stdout.trim().split(/\s+/);
}

describe("wanecast completion", () => {
  it.each(["bash", "zsh", "fish"])("%s: names every verb and every option that there is", (shell) => {
    const { code, stdout, stderr } = wanecast(["completion", shell]);
    expect([code, stderr]).toEqual([0, ""]);
    for (const command of makeProgram().commands) {
      expect(stdout, command.name()).toContain(command.name());
      for (const { long } of command.options) expect(stdout, long).toContain(long!.slice(2));
    }
  });
  it("any other shell is refused, and the three are named", () => {
    const { code, stdout, stderr } = wanecast(["completion", "sh"]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("Allowed choices are bash, zsh, fish.");
  });
  it.skipIf(!has("bash")).each([
    [["che"], ["check"]],
    [["plan", "--fail"], ["--fail-on"]],
    [
      ["check", "x.csv", "--fail-on", ""],
      ["set-aside", "warning"],
    ],
    [
      ["plan", "--date-order", ""],
      ["dmy", "mdy", "ymd"],
    ],
    [["orders", "--policy", "horizon"], ["horizon_months="]],
    [["completion", "f"], ["fish"]],
    // nothing of ours: bash falls back to the files that there are
    [["plan", "shee"], [""]],
  ])("bash: after %j comes %j", (words, offered) => {
    expect(bashOffers(saved("bash"), words)).toEqual(offered);
  });
  it.skipIf(!has("zsh"))("zsh: the script parses", () => {
    expect(run("zsh", ["-n", saved("zsh")])).toMatchObject({ status: 0, stderr: "" });
  });
  it.skipIf(!has("fish"))("fish: offers values and options", () => {
    const ask = (line: string) => run("fish", ["--no-config", "-c", `source ${saved("fish")}; complete -C '${line}'`]);
    expect(ask("wanecast plan --date-order ").stdout).toMatch(/^dmy\b.*\nmdy\b.*\nymd\b/);
    expect(ask("wanecast check --write-c").stdout).toMatch(/^--write-clean\t.*\n--write-columns\t/);
  });
});
