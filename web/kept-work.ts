import type { ColumnsFile, Plan } from "../src/index.ts";
import { EMBEDDED } from "./embedded.ts";
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
const WORK = `${location.pathname}#${EMBEDDED?.length ?? ""}`;
/** Where the plan to compare with lies, beside the work: it is large, and changes seldom. */
const COMPARED = `${WORK} plan`;

let kept = true;

/** Whether the reader's work is kept: not once it was forgotten, until there is a new plan. */
export const isKept = (): boolean => kept;

/** Keeps the work; a browser that refuses to keep anything (a private window) is no fault. */
export async function keepWork(work: KeptWork): Promise<void> {
  kept = true;
  await inStore("readwrite", (store) => {
    const put = store.put(work, WORK);
    // which other windows of this page hear; where nothing more fits in there, the work is kept all the same
    localStorage.setItem(WORK, String(performance.timeOrigin));
    return put;
  }).catch(() => undefined);
}

/** Has it told where another window of this page kept its work in the place of this one's, or forgot it. */
export function followOtherWindows(tell: () => void): void {
  window.addEventListener("storage", ({ key }) => {
    if (key !== WORK) return;
    kept = false;
    tell();
  });
}

/** Keeps the plan to compare with, or no longer any; whether the browser did. */
export async function keepPlan(plan: Plan | null): Promise<boolean> {
  const put = (store: IDBObjectStore) => (plan === null ? store.delete(COMPARED) : store.put(plan, COMPARED));
  return inStore("readwrite", put).then(
    () => true,
    () => false,
  );
}

/** The work kept earlier, or null. */
export const keptWork = (): Promise<KeptWork | null> => found(WORK);

/** The plan to compare with that was kept earlier, or null. */
export const keptPlan = (): Promise<Plan | null> => found(COMPARED);

async function found<Kept>(key: string): Promise<Kept | null> {
  const value = await inStore("readonly", (store) => store.get(key)).catch(() => undefined);
  return (value as Kept | undefined) ?? null;
}

export async function forgetWork(): Promise<void> {
  kept = false;
  await keepPlan(null);
  await inStore("readwrite", (store) => {
    localStorage.removeItem(WORK);
    return store.delete(WORK);
  }).catch(() => undefined);
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
