import { ask } from "./engine/engine.ts";
import type { Download } from "./engine/messages.ts";

/** Has the engine write a file and hands it to the reader as a download. */
export async function offerDownload(file: Download): Promise<void> {
  const text = await ask("write", { file });
  const type = file.endsWith(".json") ? "application/json" : "text/csv";
  const url = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement("a");
  link.href = url;
  link.download = file;
  link.click();
  // The browser has taken its copy once the click is handled.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
