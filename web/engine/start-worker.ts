import type { Question } from "./messages.ts";
import text from "./worker.ts?worker&inline&text";

/** Starts the engine. A page opened from disk has no second file to load: the worker's text is carried inside it. */
export function startWorker(): Worker {
  const engine = new Blob([text]);
  const worker = new Worker(URL.createObjectURL(engine));
  // a file's origin is its own alone: the worker can start others of its text only from an address that it made itself
  worker.postMessage({ id: 0, name: "carry", ask: { engine } } satisfies Question);
  return worker;
}
