import { parentPort } from "node:worker_threads";
import { type FitTask, fitFor } from "../src/index.ts";

// A thread that makes one fit after another: task in, fit out.
parentPort?.on("message", (task: FitTask) => parentPort?.postMessage(fitFor(task)));
