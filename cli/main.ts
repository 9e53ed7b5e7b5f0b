#!/usr/bin/env node
import { CommanderError } from "commander";
import { EXIT, InputRefused, UsageError } from "./exit-codes.ts";
import { note } from "./print.ts";
import { makeProgram } from "./program.ts";
import { usageHint } from "./usage-hint.ts";

run(process.argv);

/** Parses, runs, and is the one place where an error becomes an exit code. */
async function run(argv: string[]): Promise<void> {
  for (const stream of [process.stdout, process.stderr]) stream.on("error", leaveAtOnce);
  const program = makeProgram();
  try {
    await program.parseAsync(argv);
  } catch (error) {
    process.exitCode = exitCodeOf(error);
    const hint = error instanceof CommanderError ? usageHint(program, error.code, argv.slice(2)) : null;
    if (hint !== null) note(hint);
  }
}

function exitCodeOf(error: unknown): number {
  // commander has printed its message or the help already
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.usage;
  if (error instanceof UsageError) {
    note(`error: ${error.message}`);
    return EXIT.usage;
  }
  if (error instanceof InputRefused) {
    note(`Refused:\n${error.message}`);
    return EXIT.inputRefused;
  }
  // a thread that makes fits ends so where its share of memory does
  if ((error as NodeJS.ErrnoException | null)?.code === "ERR_WORKER_OUT_OF_MEMORY") {
    note(
      "error: Memory ran out. Run this again with NODE_OPTIONS=--max-old-space-size=8000 set, or more, in megabytes.",
    );
    return EXIT.usage;
  }
  const [line = "unknown"] = String(error instanceof Error ? error.message : error).split("\n");
  note(`Our fault, not yours: ${line}. Please report this with the command that you gave.`);
  return EXIT.ourFault;
}

/** The reader of a pipe may leave early (head, less), and is not to be told; a disk that is full is. */
function leaveAtOnce(error: NodeJS.ErrnoException): void {
  if (error.code === "EPIPE") process.exit(EXIT.done);
  note(`error: The output could not be written: ${error.message}.`);
  process.exit(EXIT.usage);
}
