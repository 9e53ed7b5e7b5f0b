import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { UsageError } from "../exit-codes.ts";
import { note, typed } from "../print.ts";
import { SAMPLE_FILES } from "../sample-files.ts";
import { writeOut } from "../write-out.ts";

/** Writes the invented fleet's sheets, never over a file that says something else. */
export async function runSample(folder: string): Promise<void> {
  const taken = SAMPLE_FILES.find(({ name, text }) => {
    const path = join(folder, name);
    return existsSync(path) && readFileSync(path, "utf8") !== text;
  });
  if (taken) throw new UsageError(`${join(folder, taken.name)} is there already and differs; choose an empty folder.`);
  await writeOut(
    folder,
    SAMPLE_FILES.map(({ name, text }) => ({ name, chunks: [text] })),
    [],
  );
  note(`Next: ${typed(["wanecast", "plan", folder, "--out", "out"])}`);
}
