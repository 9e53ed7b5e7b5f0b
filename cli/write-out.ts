import { note } from "./print.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

/** Writes files into a folder, as `writeFiles` does, and says which. */
export async function writeOut(folder: string, files: readonly OutFile[], inputs: readonly string[]): Promise<void> {
  await writeFiles(folder, files, inputs);
  note(`Written to ${folder}: ${files.map(({ name }) => name).join(", ")}.`);
}
