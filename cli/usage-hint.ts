import { existsSync } from "node:fs";
import type { Command } from "commander";
import { POLICY_KEYS_HELP } from "./help-text.ts";
import { typed } from "./print.ts";

/** Mistakes in what a verb takes, which commander names without saying what it does take. */
const TAKEN_WRONGLY = new Set(
  ["unknownOption", "optionMissingArgument", "missingArgument", "excessArguments"].map((code) => `commander.${code}`),
);

/**
 * What to type instead, where commander's own message does not say; null where it does.
 *
 * @param code   what commander calls the mistake
 * @param words  the command line after the program's name
 */
export function usageHint(program: Command, code: string, words: readonly string[]): string | null {
  const [first = "", second] = words;
  if (code === "commander.unknownOption" && isOptionOfVerbs(program, first)) {
    return `Options stand after the verb: wanecast VERB INPUT... ${first}`;
  }
  const policy = code === "commander.unknownOption" ? policyMeant(program, words) : null;
  if (policy !== null) return policy;
  if (code === "commander.unknownCommand") {
    if (existsSync(first)) return `A verb comes first: ${typed(["wanecast", "plan", ...words])}`;
    return "wanecast --help lists the verbs.";
  }
  if (code === "commander.help" && first === "help" && second !== undefined && !isVerb(program, second)) {
    return `There is no verb ${second}.`;
  }
  if (!TAKEN_WRONGLY.has(code)) return null;
  return isVerb(program, first) ? `wanecast ${first} --help shows two examples.` : "wanecast --help lists the verbs.";
}

/** How a policy key is given, where its name or the start of it was typed as an option. */
function policyMeant(program: Command, words: readonly string[]): string | null {
  for (const word of words) {
    if (!word.startsWith("--") || isOptionOfVerbs(program, word)) continue;
    const [name = "", value] = word.slice(2).replaceAll("-", "_").split("=");
    const key = POLICY_KEYS_HELP.find((one) => one === name || one.startsWith(`${name}_`));
    if (key !== undefined) return `That is a policy key: --policy ${key}=${value || "VALUE"}`;
  }
  return null;
}

function isVerb({ commands }: Command, word: string): boolean {
  return commands.some((verb) => verb.name() === word);
}

function isOptionOfVerbs({ commands }: Command, word: string): boolean {
  const flag = word.replace(/=.*$/, "");
  return commands.some(({ options }) => options.some(({ long, short }) => flag === long || flag === short));
}
