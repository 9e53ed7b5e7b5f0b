import type { Command, Option } from "commander";
import { POLICY_KEYS } from "../../src/index.ts";
import { FAIL_CONDITIONS } from "../verb-options.ts";

/** What may follow an option: words from a list, the start of a policy value, a file, a folder, or what people type. */
export type ValueWords = { kind: "words" | "policy"; words: readonly string[] } | { kind: "file" | "folder" | "free" };

/** An option as a shell offers it. */
export interface OfferedOption {
  long: string;
  short: string | null;
  explains: string;
  /** Null where the option takes no value. */
  value: ValueWords | null;
}

/** A verb as a shell offers it. */
export interface OfferedVerb {
  name: string;
  explains: string;
  options: OfferedOption[];
  /** Words that its argument is one of; null where it takes files. */
  words: readonly string[] | null;
}

/** Every verb with its options, read from the program itself, so that no list can fall behind. */
export function offeredVerbs(program: Command): OfferedVerb[] {
  return program.commands.map((command) => ({
    name: command.name(),
    explains: command.description(),
    options: command.createHelp().visibleOptions(command).map(offeredOption),
    words: command.registeredArguments[0]?.argChoices ?? null,
  }));
}

function offeredOption(option: Option): OfferedOption {
  const { long, short, description } = option;
  return {
    long: long ?? "",
    short: short ?? null,
    // a shell has one line: the gist, without lists and cases
    explains: description.replace(/(: |; | \().*$/, ""),
    value: option.required ? valueWords(option) : null,
  };
}

function valueWords({ long, flags, description, argChoices }: Option): ValueWords {
  if (argChoices) return { kind: "words", words: argChoices };
  // it takes several words parted by commas, so that the verb's own are no choices but stand in what it says
  if (long === "--fail-on") {
    return { kind: "words", words: Object.keys(FAIL_CONDITIONS).filter((name) => description.includes(`${name} (`)) };
  }
  if (flags.endsWith("<key=value>")) return { kind: "policy", words: POLICY_KEYS.map(({ key }) => `${key}=`) };
  if (flags.endsWith("<file>")) return { kind: "file" };
  return { kind: flags.endsWith("<folder>") ? "folder" : "free" };
}
