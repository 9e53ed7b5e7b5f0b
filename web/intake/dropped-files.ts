import { isHiddenName } from "../../src/index.ts";

interface Dropped {
  file: File;
  /** It lay in a dropped folder. */
  fromFolder: boolean;
}

/** The files of a drop, with those directly inside dropped folders (its files, not its folders). */
export async function droppedFiles(transfer: DataTransfer): Promise<Dropped[]> {
  // Entries are gone once the event is over: take them all before the first wait.
  const entries = [...transfer.items].map((item) => item.webkitGetAsEntry?.() ?? null);
  if (entries.every((entry) => entry === null)) {
    return [...transfer.files].map((file) => ({ file, fromFolder: false }));
  }
  const files: Dropped[] = [];
  for (const entry of entries) {
    if (entry?.isFile) files.push({ file: await fileOf(entry as FileSystemFileEntry), fromFolder: false });
    else if (entry?.isDirectory) {
      const inside = await filesInside(entry as FileSystemDirectoryEntry);
      files.push(...inside.map((file) => ({ file, fromFolder: true })));
    }
  }
  return files;
}

async function filesInside(folder: FileSystemDirectoryEntry): Promise<File[]> {
  const reader = folder.createReader();
  const inside: FileSystemEntry[] = [];
  // A reader hands out entries in portions until one is empty.
  for (;;) {
    const portion = await new Promise<FileSystemEntry[]>((done, failed) => reader.readEntries(done, failed));
    if (portion.length === 0) break;
    inside.push(...portion);
  }
  return Promise.all(
    inside
      .filter(({ isFile, name }) => isFile && !isHiddenName(name))
      .map((entry) => fileOf(entry as FileSystemFileEntry)),
  );
}

function fileOf(entry: FileSystemFileEntry): Promise<File> {
  return new Promise((done, failed) => entry.file(done, failed));
}
