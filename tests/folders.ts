import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

const made: string[] = [];

/** A folder of its own, with files, gone after the tests of the file. */
export function folderWith(files: Record<string, string> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), "wanecast-test-"));
  made.push(folder);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

/** Takes away what `folderWith` made. */
export function removeFolders(): void {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
}
