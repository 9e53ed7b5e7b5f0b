/** Hands a blob to the reader as a download. */
export function saveBlob(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken its copy once the click is handled.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

const TYPES: Record<string, string> = {
  json: "application/json;charset=utf-8",
  csv: "text/csv;charset=utf-8",
  ics: "text/calendar;charset=utf-8",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** Hands a text or a workbook to the reader as a download, of the type that its name's ending tells. */
export function saveFile(content: string | Uint8Array, name: string): void {
  const type = TYPES[name.slice(name.lastIndexOf(".") + 1)] ?? "text/plain;charset=utf-8";
  saveBlob(new Blob([content as BlobPart], { type }), name);
}
