/** The files of a drop, with those inside dropped folders, by path. */
export async function droppedFiles(transfer: DataTransfer): Promise<File[]> {
  // Entries are gone once the event is over: take them all before the first wait.
  const entries = [...transfer.items].map((item) => item.webkitGetAsEntry?.() ?? null);
  if (entries.every((entry) => entry === null)) return [...transfer.files];
  const files: File[] = [];
  for (const entry of entries) if (entry) await collect(entry, files);
  return files;
}

async function collect(entry: FileSystemEntry, into: File[]): Promise<void> {
  if (entry.isFile) {
    into.push(await new Promise<File>((done, failed) => (entry as FileSystemFileEntry).file(done, failed)));
    return;
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const inside: FileSystemEntry[] = [];
  // A reader hands out entries in portions until one is empty.
  for (;;) {
    const portion = await new Promise<FileSystemEntry[]>((done, failed) => reader.readEntries(done, failed));
    if (portion.length === 0) break;
    inside.push(...portion);
  }
  inside.sort((a, b) => (a.name < b.name ? -1 : 1));
  for (const child of inside) await collect(child, into);
}
