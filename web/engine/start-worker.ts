import text from "./worker.ts?worker&inline&text";

/** Starts the engine. A page opened from disk has no second file to load: the worker's text is carried inside it. */
export function startWorker(): Worker {
  return new Worker(URL.createObjectURL(new Blob([text])));
}
