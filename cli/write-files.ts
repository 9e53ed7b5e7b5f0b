import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import { setImmediate as nextTask } from "node:timers/promises";
import { UsageError } from "./exit-codes.ts";
import { isFolder } from "./read-inputs.ts";
import { removedWhenStopped } from "./when-stopped.ts";

/** How much is written between two looks at whether the program is to stop: some hundredths of a second's work. */
const HEARD_EVERY_BYTES = 1 << 20;

/** A file to be written: its name and its text or bytes in chunks. */
export interface OutFile {
  name: string;
  chunks: Iterable<string | Uint8Array>;
}

/**
 * Stops where nothing could be written into a folder, so that it is said before the work rather than after it.
 *
 * @throws UsageError where the folder has no name or takes no files
 */
export function requireWritable(folder: string): void {
  requireName(folder);
  try {
    let nearest = resolve(folder);
    while (!existsSync(nearest)) nearest = dirname(nearest);
    if (!isFolder(nearest)) throw new UsageError(`Nothing could be written into ${folder}: ${nearest} is no folder.`);
    accessSync(nearest, constants.W_OK);
  } catch (error) {
    throw whyNotWritten(folder, error);
  }
}

/**
 * Writes files into a folder, whole or not at all: everything goes into temporary names first and is renamed
 * when all of it stands. Where the program is stopped meanwhile, nothing of it stays.
 *
 * @param inputs  paths that were read; none of them is written over
 * @throws UsageError where an output would replace an input, or the folder has no name or takes no files
 */
export async function writeFiles(folder: string, files: readonly OutFile[], inputs: readonly string[]): Promise<void> {
  requireName(folder);
  const read = new Set(inputs.map(fileBehind));
  const replaced = files.find(({ name }) => read.has(fileBehind(join(folder, name))));
  if (replaced)
    throw new UsageError(`The input ${join(folder, replaced.name)} would be written over; choose another folder.`);
  const written = files.map(({ name, chunks }) => ({
    temporary: join(folder, `.${name}.${process.pid}.part`),
    path: join(folder, name),
    chunks,
  }));
  const temporaries = written.map(({ temporary }) => temporary);
  const forget = removedWhenStopped(temporaries);
  try {
    makeFolder(resolve(folder));
    for (const { temporary, chunks } of written) await writeChunks(temporary, chunks);
    for (const { temporary, path } of written) renameSync(temporary, path);
  } catch (error) {
    throw whyNotWritten(folder, error);
  } finally {
    forget();
    for (const temporary of temporaries) rmSync(temporary, { force: true });
  }
}

function requireName(folder: string): void {
  if (folder.trim() === "") throw new UsageError("The folder to write into has no name.");
}

/** What the system says of a folder, for people; any other error as it is. */
function whyNotWritten(folder: string, error: unknown): unknown {
  if (!(error instanceof Error && "syscall" in error)) return error;
  return new UsageError(`Nothing could be written into ${folder}: ${error.message}.`);
}

/**
 * What names a file whatever the path to it: links lead to it, and some systems take packs.csv and Packs.CSV for one.
 * The path itself where there is no file yet.
 */
function fileBehind(path: string): string {
  try {
    const { dev, ino } = statSync(path, { bigint: true });
    return `${dev} ${ino}`;
  } catch {
    return resolve(path);
  }
}

/** Makes a folder and those above it, one at a time: where a system takes no folder, one call for all may never end. */
function makeFolder(path: string): void {
  if (isFolder(path)) return;
  makeFolder(dirname(path));
  mkdirSync(path);
}

async function writeChunks(path: string, chunks: Iterable<string | Uint8Array>): Promise<void> {
  rmSync(path, { force: true });
  // never through what someone else put there meanwhile: a link could lead anywhere
  const file = openSync(path, "wx");
  try {
    let unheard = 0;
    for (const chunk of chunks) {
      const bytes = typeof chunk === "string" ? Buffer.from(chunk, "utf8") : chunk;
      writeWhole(file, bytes);
      unheard += bytes.length;
      if (unheard < HEARD_EVERY_BYTES) continue;
      // signals are heard between tasks only
      await nextTask();
      unheard = 0;
    }
  } finally {
    closeSync(file);
  }
}

/** A write may take a part only. */
function writeWhole(file: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
}
