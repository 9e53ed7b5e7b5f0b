import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { POLICY_KEYS_HELP, VERB_HELP } from "../../cli/help-text.ts";
import packageJson from "../../package.json" with { type: "json" };
import { POLICY_KEYS } from "../../src/fleet/policy-keys.ts";
import { lonelyProgram, SAMPLE, wanecast } from "./run-wanecast.ts";

const VERBS = readdirSync(new URL("../../cli/verbs", import.meta.url)).map((name) => name.replace(".ts", ""));

describe("wanecast: how it is called", () => {
  it("without a verb prints help on stderr and exits with 2", () => {
    const { code, stdout, stderr } = wanecast([]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^Usage: wanecast /);
  });
  it("--help names every verb there is, and no other", () => {
    const { code, stdout, stderr } = wanecast(["--help"]);
    expect([code, stderr]).toEqual([0, ""]);
    const commands = stdout.slice(stdout.indexOf("Verbs:"), stdout.indexOf("Start with"));
    const named = [...commands.matchAll(/^ {2}([a-z]+) /gm)].map(([, verb]) => verb);
    expect(named.sort()).toEqual(["help", ...VERBS].sort());
    expect(Object.keys(VERB_HELP).sort()).toEqual([...VERBS].sort());
  });
  it("--version prints the package's version", () => {
    expect(wanecast(["--version"])).toEqual({ code: 0, stdout: `${packageJson.version}\n`, stderr: "" });
  });
  it("help and version load neither the engine nor a verb, and so come at once", () => {
    const program = lonelyProgram(["options.cjs"]);
    for (const args of [["--version"], ["--help"], ["plan", "--help"], ["pln"]]) {
      expect(wanecast(args, { program })).toEqual(wanecast(args));
    }
  });
  it.each(VERBS)("%s --help leads with two examples and explains every option", (verb) => {
    const { code, stdout } = wanecast([verb, "--help"]);
    expect(code).toBe(0);
    const examples = VERB_HELP[verb]?.examples ?? [];
    expect(examples).toHaveLength(2);
    expect(stdout.startsWith(`Examples:\n  ${examples[0]}\n  ${examples[1]}\n`)).toBe(true);
    for (const [, rest] of stdout.matchAll(/^ {2}(?:-\w, )?--[a-z-]+(?: <[^>]+>)?(.*)$/gm)) {
      expect(rest?.trim().length).toBeGreaterThan(4);
    }
  });
  it("the help lists the engine's policy keys, all of them in their order", () => {
    expect(POLICY_KEYS_HELP).toEqual(POLICY_KEYS.map(({ key }) => key));
    const words = wanecast(["plan", "--help"]).stdout.match(/\w+/g);
    for (const key of POLICY_KEYS_HELP) expect(words).toContain(key);
  });

  it.each([
    [
      "an unknown verb",
      ["pln", SAMPLE],
      "error: unknown verb 'pln'\n(Did you mean plan?)\nwanecast --help lists the verbs.\n",
    ],
    [
      "an unknown option",
      ["plan", SAMPLE, "--jsn"],
      "error: unknown option '--jsn'\n(Did you mean --json?)\nwanecast plan --help shows two examples.\n",
    ],
    ["an option of no verb", ["--frob"], "error: unknown option '--frob'\nwanecast --help lists the verbs.\n"],
    [
      "an option without its value",
      ["plan", SAMPLE, "--out"],
      "error: option '--out <folder>' argument missing\nwanecast plan --help shows two examples.\n",
    ],
    [
      "a word too many",
      ["sample", "sheets", "more"],
      "error: too many arguments for 'sample'. Expected 1 argument but got 2.\nwanecast sample --help shows two examples.\n",
    ],
    [
      "a verb without inputs",
      ["plan"],
      "error: missing required argument 'input'\nwanecast plan --help shows two examples.\n",
    ],
    [
      "sheets without a verb",
      ["sample-data", "--out", "out"],
      "error: unknown verb 'sample-data'\nA verb comes first: wanecast plan sample-data --out out\n",
    ],
    [
      "an option before the verb",
      ["--json", "plan", SAMPLE],
      "error: unknown option '--json'\nOptions stand after the verb: wanecast VERB INPUT... --json\n",
    ],
    [
      "a policy key as an option",
      ["plan", SAMPLE, "--out", "out", "--horizon=12"],
      "error: unknown option '--horizon=12'\nThat is a policy key: --policy horizon_months=12\n",
    ],
    [
      "a policy key as an option, its value apart",
      ["orders", SAMPLE, "--end-of-life-percent", "70"],
      "error: unknown option '--end-of-life-percent'\nThat is a policy key: --policy end_of_life_percent=VALUE\n",
    ],
    [
      "a condition that is none",
      ["check", SAMPLE, "--fail-on", "late"],
      "error: option '--fail-on <condition>' argument 'late' is invalid. Allowed choices are set-aside, warning.\n",
    ],
    [
      "a date order that is none",
      ["check", SAMPLE, "--date-order", "dym"],
      "error: option '--date-order <order>' argument 'dym' is invalid. Allowed choices are dmy, mdy, ymd.\n",
    ],
    [
      "a policy without a value",
      ["check", SAMPLE, "--policy", "horizon_months"],
      'error: --policy takes KEY=VALUE, such as horizon_months=24, not "horizon_months".\n',
    ],
    ["standard input twice", ["check", "-", "-"], "error: Standard input (-) can be read once only.\n"],
  ])("%s exits with 2 and says what to give", (_, args, message) => {
    expect(wanecast(args)).toEqual({ code: 2, stdout: "", stderr: message });
  });
  it("help of a verb that is none exits with 2 and says so", () => {
    const { code, stderr } = wanecast(["help", "pln"]);
    expect(code).toBe(2);
    expect(stderr.endsWith("\nThere is no verb pln.\n")).toBe(true);
    const known = wanecast(["help", "plan"]);
    expect([known.code, known.stderr]).toEqual([0, ""]);
    expect(known.stdout).toContain("Usage: wanecast plan ");
  });
  it("an unknown policy key exits with 2, names the one that was meant and lists all", () => {
    const { code, stdout, stderr } = wanecast(["check", SAMPLE, "--policy", "horizon=24"]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain('error: "horizon" is no policy key. Did you mean horizon_months? Use one of as_of,');
  });
  it("an as-of that is no day exits with 2", () => {
    const { code, stderr } = wanecast(["check", SAMPLE, "--as-of", "2026-02-30"]);
    expect(code).toBe(2);
    expect(stderr).toMatch(
      /^error: "2026-02-30" cannot be used for as_of: a date as YYYY-MM-DD, 1990 to 2100, was expected\./,
    );
  });
  it("a policy value may be written as in a policy sheet, but an amount whose point may part thousands may not", () => {
    const check = (...pairs: string[]) => wanecast(["check", SAMPLE, ...pairs.flatMap((pair) => ["--policy", pair])]);
    expect(check("service_level=95 %", "end_of_life_percent=70%", "as_of=1 Dec 2026").stdout).toMatch(
      /^Sheets as of 2026-12-01\n/,
    );
    const { code, stderr } = check("budget_per_fiscal_year=12.000");
    expect(code).toBe(2);
    expect(stderr).toBe(
      'error: "12.000" cannot be used for budget_per_fiscal_year: an amount such as 25000 was expected. Write, for example, 25000 (money); the default is none.\n',
    );
  });
});
