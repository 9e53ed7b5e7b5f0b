import { ask } from "./engine/engine.ts";
import type { Download } from "./engine/messages.ts";
import { saveFile } from "./save-file.ts";

/** Has the engine write a file and hands it to the reader as a download. */
export async function offerDownload(file: Download): Promise<void> {
  saveFile(await ask("write", { file }), file);
}
