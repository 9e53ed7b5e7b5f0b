import { ask } from "./engine/engine.ts";
import type { Download } from "./engine/messages.ts";
import { saveText } from "./save-file.ts";

/** Has the engine write a file and hands it to the reader as a download. */
export async function offerDownload(file: Download): Promise<void> {
  const text = await ask("write", { file });
  saveText(text, file);
}
