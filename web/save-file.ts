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
