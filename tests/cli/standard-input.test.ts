import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";
import { folderWith } from "../folders.ts";
import { PROGRAM } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

/** Runs the program with standard input from a program that takes its time before the first and the last line. */
function wanecastBehindSlow(lines: readonly [string, string], args: readonly string[]) {
  const slow = `(sleep 2; printf '%s\\n' "$1"; sleep 0.1; printf '%s\\n' "$2") | { shift 2; "$@"; }`;
  const words = ["-c", slow, "sh", ...lines, process.execPath, PROGRAM, ...args];
  const { status, stdout, stderr } = spawnSync("sh", words, { encoding: "utf8" });
  return { code: status, stdout, stderr };
}

// GTIN with the prefix 952 that GS1 keeps for examples (from memory)
const LABEL = "(01)09521234543213(17)280229(10)LOT";

it("scan waits for a scanner that is slower than it", () => {
  const { code, stdout, stderr } = wanecastBehindSlow([`${LABEL}7`, `${LABEL}8`], ["scan", "--as-of", "2026-11-01"]);
  expect([code, stdout.split("\r\n").length], stderr).toEqual([0, 4]);
  expect(stdout).toContain("LOT8");
});
it("- waits for a program that makes the sheet", () => {
  const { code, stdout } = wanecastBehindSlow(
    ["serial,item", "A1,pack"],
    ["check", "-", "--as-of", "2026-11-01", "--json"],
  );
  expect([code, JSON.parse(stdout).inputs[0].used]).toEqual([0, 1]);
});
it("trace --ids - waits for a program that makes the list", () => {
  const { code, stdout } = wanecastBehindSlow(["P1", "P2"], ["trace", "--ids", "-", folderWith(SMALL_FLEET), "--json"]);
  expect([code, JSON.parse(stdout).ids.map(({ id }: { id: string }) => id)]).toEqual([0, ["P1", "P2"]]);
});
