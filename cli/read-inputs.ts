import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { isHiddenName, type RefusedFile, type SheetFile, withDistinctNames } from "../src/index.ts";
import { UsageError } from "./exit-codes.ts";
import { readStandardInput } from "./read-standard-input.ts";

/** What was found under the inputs named on the command line. */
export interface InputFiles {
  files: SheetFile[];
  refused: RefusedFile[];
  /** Full paths of what was read, so that no output is written over an input. */
  paths: string[];
  /** Folders inside a folder that was read, with sheets in them that were not. */
  unread: string[];
  /** Paths that lead to a file that had been read already. */
  again: string[];
  /** Files that another of the same name came before, with the name that they go by. */
  renamed: { path: string; name: string }[];
}

/** What was found so far, with each file by what the disk calls it, as two paths may lead to one, and where each lies. */
interface Found extends InputFiles {
  byDisk: Map<string, SheetFile>;
  from: string[];
}

/** Names of files that hold sheets. */
const SHEET = /\.(csv|tsv|xlsx)$/i;

/** Bytes that a file may have. */
const LARGEST_FILE = 256 * 1024 * 1024;

/**
 * Reads files, folders (their files, not their folders) and `-`, the standard input. Never throws for a bad file. What
 * lies in a folder and is neither, such as a pipe or a device, is passed over: to read it may never end. So is what is
 * hidden there. One that is named is read, as a shell's own pipes are. A file named twice, or named and in a folder, is read
 * once: its stock would count twice.
 */
export function readInputs(inputs: readonly string[]): InputFiles {
  if (inputs.filter((input) => input === "-").length > 1)
    throw new UsageError("Standard input (-) can be read once only.");
  const found: Found = {
    files: [],
    refused: [],
    paths: [],
    unread: [],
    again: [],
    renamed: [],
    byDisk: new Map(),
    from: [],
  };
  for (const input of inputs) {
    if (input === "-") readFile(0, "-", found);
    else if (isFolder(input)) readFolder(input, found);
    else readFile(input, basename(input), found);
  }
  const named = new Set(inputs.map((input) => resolve(input)));
  const { refused, paths, again, from } = found;
  const files = withDistinctNames(found.files);
  const renamed = files.flatMap(({ name }, at) => (name === found.files[at]!.name ? [] : [{ path: from[at]!, name }]));
  const unread = found.unread.filter((path) => !named.has(resolve(path)));
  return { files, refused, paths, unread, again, renamed };
}

/** True where the path is a folder; false where it is none or nothing. */
export function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function readFolder(folder: string, found: Found): void {
  const file = basename(folder);
  try {
    const all = readdirSync(folder).filter((name) => !isHiddenName(name));
    const names = all.sort().filter((name) => mayBeFile(join(folder, name)));
    for (const name of names) readFile(join(folder, name), name, found, true);
    const inside = all.map((name) => join(folder, name)).filter((path) => isFolder(path) && holdsSheets(path));
    if (names.length === 0) found.refused.push({ file, code: "empty-folder", message: EMPTY_FOLDER });
    else found.unread.push(...inside);
  } catch (error) {
    found.refused.push({ file, ...whyUnreadable(error) });
  }
}

const EMPTY_FOLDER = "The folder holds no files; folders inside a folder are not read, name them as well.";

function holdsSheets(folder: string): boolean {
  try {
    return readdirSync(folder).some((name) => SHEET.test(name) && !isHiddenName(name));
  } catch {
    return false;
  }
}

/** True for a file, and for a link that leads nowhere: it is told as a file that is not there. */
function mayBeFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? true;
}

function readFile(path: string | 0, name: string, found: Found, fromFolder = false): void {
  try {
    const isTooLarge = path !== 0 && statSync(path).size > LARGEST_FILE;
    const disk = path === 0 ? "" : diskName(path);
    const before = found.byDisk.get(disk);
    if (before) {
      // one that is named must be a sheet
      if (!fromFolder) before.fromFolder = false;
      found.again.push(String(path));
      return;
    }
    const bytes = isTooLarge ? null : path === 0 ? readStandardInput(LARGEST_FILE) : bytesOf(path);
    if (bytes === null || bytes.length > LARGEST_FILE) {
      found.refused.push({
        file: name,
        code: "too-large",
        message: "The file is over 256 MB; split it by year or site.",
      });
      return;
    }
    if (path !== 0) found.paths.push(path);
    const file = { name, bytes, fromFolder };
    found.files.push(file);
    found.from.push(String(path));
    found.byDisk.set(disk, file);
  } catch (error) {
    found.refused.push({ file: name, ...whyUnreadable(error) });
  }
}

/** What a disk calls a file, whatever path leads to it. */
function diskName(path: string): string {
  const { dev, ino } = statSync(path, { bigint: true });
  return `${dev}:${ino}`;
}

/** A file's bytes as plain ones, whose parts are copies where those of a Buffer are not. */
function bytesOf(path: string): Uint8Array {
  const { buffer, byteOffset, byteLength } = readFileSync(path);
  return new Uint8Array(buffer, byteOffset, byteLength);
}

/** Why a file could not be read, for people, with a code. */
export function whyUnreadable(error: unknown): { code: string; message: string } {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  if (code === "ENOENT") return { code: "not-found", message: "There is no such file or folder." };
  if (code === "EACCES" || code === "EPERM")
    return { code: "no-permission", message: "It may not be read; check its permissions." };
  return { code: "unreadable", message: `The file could not be read (${code || String(error)}).` };
}
