import type { Command } from "commander";
import { bashScript } from "../completion/bash.ts";
import { fishScript } from "../completion/fish.ts";
import { offeredVerbs } from "../completion/words.ts";
import { zshScript } from "../completion/zsh.ts";
import { print } from "../print.ts";
import type { Shell } from "../verb-options.ts";

const SCRIPT = { bash: bashScript, zsh: zshScript, fish: fishScript };

/** The script that makes a shell complete verbs, options and policy keys. */
export async function runCompletion(program: Command, shell: Shell): Promise<void> {
  await print([SCRIPT[shell](offeredVerbs(program))]);
}
