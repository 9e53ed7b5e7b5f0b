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

const TYPES: Record<string, string> = { json: "application/json", csv: "text/csv", ics: "text/calendar" };

/** Hands a text to the reader as a download, of the type that its name's ending tells. */
export function saveText(text: string, name: string): void {
  const type = TYPES[name.slice(name.lastIndexOf(".") + 1)] ?? "text/plain";
  saveBlob(new Blob([text], { type: `${type};charset=utf-8` }), name);
}
