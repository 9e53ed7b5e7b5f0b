import packed from "./worker.ts?worker&inline&packed";

/** Starts the engine. A page opened from disk has no second file to load: the worker's text is carried inside it. */
export async function startWorker(): Promise<Worker> {
  const bytes = Uint8Array.from(atob(packed), (character) => character.charCodeAt(0));
  const text = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  const address = URL.createObjectURL(await new Response(text).blob());
  return new Worker(address);
}
