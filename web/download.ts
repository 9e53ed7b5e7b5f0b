import { ask } from "./engine/engine.ts";
import type { Download } from "./engine/messages.ts";
import { saveBlob } from "./save-file.ts";

/** Has the engine write a file and hands it to the reader as a download. */
export async function offerDownload(file: Download): Promise<void> {
  const text = await ask("write", { file });
  const type = file.endsWith(".json") ? "application/json" : "text/csv";
  saveBlob(new Blob([text], { type: `${type};charset=utf-8` }), file);
}
