import { deflateAsync } from "@gfx/zopfli";

/** How hard to look for a shorter packing: more rounds save some hundred bytes and cost seconds. */
const ROUNDS = 15;

/** The worker's text as vite first writes it into the module that would start it (vite 8). */
const WORKER_TEXT = /const jsContent = ("(?:[^"\\]|\\.)*");/;

/**
 * Build plug-in: what is imported from `...?worker&inline&packed` is the worker's text, deflated (RFC 1951) and in
 * base64, so that the page is a third smaller. Every browser unpacks it by itself: engine/start-worker.ts.
 */
export function packWorker() {
  return {
    name: "pack-worker",
    enforce: "pre" as const,
    async transform(code: string, id: string): Promise<string | null> {
      if (!id.endsWith("?worker&inline&packed")) return null;
      const text = WORKER_TEXT.exec(code)?.[1];
      if (text === undefined) throw new Error(`no text of a worker in ${id}`);
      const packed = await deflateAsync(Buffer.from(JSON.parse(text) as string), { numiterations: ROUNDS });
      return `export default "${Buffer.from(packed).toString("base64")}";`;
    },
  };
}
