import type { SheetFile } from "./reading.ts";

/**
 * The files, of those of one name each but the first with its number behind it: "packs.csv", "packs (2).csv". What is
 * found in a file is told by its name, and a file that is corrected takes the place of the one of its name.
 */
export function withDistinctNames<File extends SheetFile>(files: readonly File[]): File[] {
  const taken = new Set<string>();
  return files.map((file) => {
    let { name } = file;
    for (let number = 2; taken.has(name); number++) name = file.name.replace(/(\.\w+)?$/, ` (${number})$1`);
    taken.add(name);
    return { ...file, name };
  });
}
