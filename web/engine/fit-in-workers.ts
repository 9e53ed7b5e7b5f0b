import { type FitMade, type FitTask, type Fitter, fitSideBySide } from "../../src/index.ts";
import type { Answer, Question } from "./messages.ts";

/** Workers at once: each takes the engine's text and a part of the memory. */
const WORKERS_AT_MOST = 8;

let address = "";

/** Takes the engine's text, of which further workers are started. */
export function carryEngine(engine: Blob): void {
  address = URL.createObjectURL(engine);
}

/** Makes the fits that planning will ask for in further workers, which run what this one runs. */
export async function fitInWorkers(tasksAhead: () => FitTask[]): Promise<void> {
  // one processor is left to the page, which draws meanwhile
  const processors = Math.min(WORKERS_AT_MOST, navigator.hardwareConcurrency - 1);
  await fitSideBySide(tasksAhead, processors, startWorker);
}

function startWorker(): Fitter {
  const worker = new Worker(address);
  return {
    fit: (task) =>
      new Promise((resolve, reject) => {
        worker.onerror = () => reject(new Error("The worker stopped."));
        worker.onmessage = ({ data }: MessageEvent<Answer>) => {
          if ("failed" in data) reject(new Error(data.failed));
          else resolve(data.answer as FitMade);
        };
        worker.postMessage({ id: 0, name: "fit", ask: task } satisfies Question);
      }),
    end: () => worker.terminate(),
  };
}
