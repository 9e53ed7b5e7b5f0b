import type { ColumnsFile } from "../src/index.ts";
import type { NamedBytes } from "./intake/intake.ts";

/** What is kept of the reader's work in this browser, so that it survives a reload. */
export interface KeptWork {
  files: NamedBytes[];
  columns: ColumnsFile | null;
  choices: [string, string][];
}

const DATABASE = "wanecast";
const STORE = "work";

/** Pages opened from disk share one store: a page knows its own work by where it lies, and by the plan inside it. */
function keyOf(embedded: string | null): string {
  return `${location.pathname}#${embedded === null ? "" : embedded.length}`;
}

/** Keeps the work; a browser that refuses to keep anything (a private window) is no fault. */
export async function keepWork(work: KeptWork, embedded: string | null): Promise<void> {
  await inStore("readwrite", (store) => store.put(work, keyOf(embedded))).catch(() => undefined);
}

/** The work kept earlier, or null. */
export async function keptWork(embedded: string | null): Promise<KeptWork | null> {
  const found = await inStore("readonly", (store) => store.get(keyOf(embedded))).catch(() => undefined);
  return (found as KeptWork | undefined) ?? null;
}

export async function forgetWork(embedded: string | null): Promise<void> {
  await inStore("readwrite", (store) => store.delete(keyOf(embedded))).catch(() => undefined);
}

async function inStore(mode: IDBTransactionMode, run: (store: IDBObjectStore) => IDBRequest): Promise<unknown> {
  const database = await settled(opened());
  try {
    const transaction = database.transaction(STORE, mode);
    const written = new Promise((done, failed) => {
      transaction.addEventListener("complete", done);
      // as when the browser has no room left
      transaction.addEventListener("abort", () => failed(transaction.error));
    });
    const [result] = await Promise.all([settled(run(transaction.objectStore(STORE))), written]);
    return result;
  } finally {
    database.close();
  }
}

function opened(): IDBOpenDBRequest {
  const request = indexedDB.open(DATABASE, 1);
  request.addEventListener("upgradeneeded", () => request.result.createObjectStore(STORE));
  return request;
}

function settled<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((done, failed) => {
    request.addEventListener("success", () => done(request.result));
    request.addEventListener("error", () => failed(request.error));
  });
}
