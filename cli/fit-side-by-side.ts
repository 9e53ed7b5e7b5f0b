import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { type FitMade, type FitTask, keepFit } from "../src/index.ts";
import { clearProgress, showProgress } from "./progress.ts";

/** Rounds in which fits are asked for: the second is for items that borrow from those of the first. */
const ROUNDS = 2;

/**
 * Makes the fits that planning will ask for on as many processors as there are. Where threads can't be had, or there
 * is little to share out, nothing is done, and planning makes them one after another.
 *
 * @param tasksAhead  fits that are still to be made
 */
export async function fitSideBySide(tasksAhead: () => FitTask[]): Promise<void> {
  // the build leaves it beside the program
  const file = join(__dirname, "fit-worker.cjs");
  if (availableParallelism() < 2 || !existsSync(file)) return;
  for (let round = 0; round < ROUNDS; round++) {
    const tasks = tasksAhead();
    if (tasks.length < 2) break;
    try {
      await makeAll(tasks, file);
    } catch {
      break;
    }
  }
  clearProgress();
}

async function makeAll(tasks: readonly FitTask[], file: string): Promise<void> {
  // the longest first, so that none is left for the end
  const waiting = [...tasks].sort((a, b) => weightOf(a) - weightOf(b));
  let done = 0;
  const threads = Math.min(tasks.length, availableParallelism());
  await Promise.all(
    Array.from({ length: threads }, async () => {
      const worker = new Worker(file);
      try {
        for (let task = waiting.pop(); task !== undefined; task = waiting.pop()) {
          showProgress(`Learning how items' packs fade, ${done} of ${tasks.length} ...`);
          keepFit(task, await answerOf(worker, task));
          done++;
        }
      } finally {
        await worker.terminate();
      }
    }),
  );
}

const weightOf = ({ packs }: FitTask) =>
  packs.reduce((sum, { years, bounds }) => sum + years.length + bounds.length, 0);

function answerOf(worker: Worker, task: FitTask): Promise<FitMade> {
  return new Promise((resolve, reject) => {
    worker.once("error", reject);
    worker.once("message", (made: FitMade) => {
      worker.off("error", reject);
      resolve(made);
    });
    worker.postMessage(task);
  });
}
