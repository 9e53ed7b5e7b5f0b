import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { type FitMade, type FitTask, type Fitter, fitSideBySide } from "../src/index.ts";
import { clearProgress, showProgress } from "./progress.ts";

/** Makes the fits that planning will ask for on as many processors as there are. */
export async function fitInThreads(tasksAhead: () => FitTask[]): Promise<void> {
  // the build leaves it beside the program
  const file = join(__dirname, "fit-worker.cjs");
  if (!existsSync(file)) return;
  await fitSideBySide(
    tasksAhead,
    availableParallelism(),
    () => startThread(file),
    (done, of) => showProgress(`Learning how items' packs fade, ${done} of ${of} ...`),
  );
  clearProgress();
}

function startThread(file: string): Fitter {
  const thread = new Worker(file);
  let failed: (reason: Error) => void = () => {};
  let made: (fit: FitMade) => void = () => {};
  thread.on("error", (reason: Error) => failed(reason));
  thread.on("message", (fit: FitMade) => made(fit));
  return {
    fit: (task) =>
      new Promise((resolve, reject) => {
        [made, failed] = [resolve, reject];
        thread.postMessage(task);
      }),
    end: () => void thread.terminate(),
  };
}
