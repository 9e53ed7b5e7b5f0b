import { note } from "./print.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

/** Writes files into a folder, as `writeFiles` does, and says which. */
export async function writeOut(folder: string, files: readonly OutFile[], inputs: readonly string[]): Promise<void> {
  await writeFiles(folder, files, inputs);
  noteWritten(folder, files);
}

/** Says which files were written into a folder. */
export function noteWritten(folder: string, files: readonly OutFile[]): void {
  note(`Written to ${folder}: ${files.map(({ name }) => name).join(", ")}.`);
}
