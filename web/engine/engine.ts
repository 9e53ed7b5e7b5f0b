import type { Answer, AskName, Asks, Began } from "./messages.ts";
import { startWorker } from "./start-worker.ts";

// started at once: it gets ready while the page does
let worker: Promise<Worker> | null = start();
let nextId = 1;
const waiting = new Map<number, { done: (answer: never) => void; failed: (reason: Error) => void }>();

let tellStage: (name: string) => void = () => {};

/** Has the stages of the engine's work told as they begin. */
export function followStages(tell: (name: string) => void): void {
  tellStage = tell;
}

/** The reader stopped the work: nothing went wrong. */
export class Stopped extends Error {}

/** Asks the engine, which runs in a worker of its own so that the page stays awake. */
export function ask<Name extends AskName>(name: Name, question: Asks[Name]["ask"]): Promise<Asks[Name]["answer"]> {
  worker ??= start();
  const id = nextId++;
  worker.then((started) => started.postMessage({ id, name, ask: question }), failAll);
  return new Promise((done, failed) => waiting.set(id, { done, failed }));
}

/** Stops whatever the engine is at. It forgets what it had read, and starts anew with the next question. */
export function stopEngine(): void {
  worker?.then((started) => started.terminate());
  worker = null;
  failAll(new Stopped());
}

async function start(): Promise<Worker> {
  const started = await startWorker();
  started.addEventListener("message", (event: MessageEvent<Answer | Began>) => {
    const reply = event.data;
    if ("began" in reply) return tellStage(reply.began);
    const waiter = waiting.get(reply.id);
    waiting.delete(reply.id);
    if ("failed" in reply) waiter?.failed(new Error(reply.failed));
    else waiter?.done(reply.answer as never);
  });
  started.addEventListener("error", (event) => failAll(new Error(event.message || "The engine stopped.")));
  return started;
}

function failAll(reason: Error): void {
  for (const waiter of waiting.values()) waiter.failed(reason);
  waiting.clear();
}
