import { type FitMade, type FitTask, fitFor, isKept, keepFit } from "./kept-fits.ts";

/** Something that makes fits beside others: a thread, a worker. */
export interface Fitter {
  /** Makes one fit, by `fitFor`, at a time. */
  fit(task: FitTask): Promise<FitMade>;
  end(): void;
}

/** Rounds in which fits are asked for: the second is for items that borrow from those of the first. */
const ROUNDS = 2;

/**
 * Makes the fits that a plan will ask for side by side, and keeps them for it. Where there is one processor
 * nothing is done, and where a fitter fails no more is: the plan then makes the rest by itself, and is the same.
 *
 * @param tasksAhead  fits that are still to be made, `fitsToPlan` or `fitsToProve`
 * @param processors  how many fitters may work at once
 * @param start       starts one
 * @param tell        hears how many of how many are made
 */
export async function fitSideBySide(
  tasksAhead: () => FitTask[],
  processors: number,
  start: () => Fitter,
  tell: (done: number, of: number) => void = () => {},
): Promise<void> {
  if (processors < 2) return;
  try {
    for (let round = 0; round < ROUNDS; round++) {
      const tasks = tasksAhead();
      if (tasks.length === 0) return;
      // one alone is made just as soon here
      if (tasks.length === 1) keepFit(tasks[0]!, fitFor(tasks[0]!));
      else await makeAll(tasks, Math.min(tasks.length, processors), start, tell);
    }
  } catch {
    // see above: nothing is lost but time
  }
}

async function makeAll(
  tasks: readonly FitTask[],
  fitters: number,
  start: () => Fitter,
  tell: (done: number, of: number) => void,
): Promise<void> {
  // the longest first, so that none is left for the end
  const waiting = [...tasks].sort((a, b) => weightOf(a) - weightOf(b));
  let done = 0;
  const work = async () => {
    const fitter = start();
    try {
      for (let task = waiting.pop(); task !== undefined; task = waiting.pop()) {
        tell(done, tasks.length);
        // items without readings can share one
        if (!isKept(task)) keepFit(task, await fitter.fit(task));
        done++;
      }
    } finally {
      // where one fails the others finish what they are at, and take no more
      waiting.length = 0;
      fitter.end();
    }
  };
  const ends = await Promise.allSettled(Array.from({ length: fitters }, work));
  const failed = ends.find((end) => end.status === "rejected");
  if (failed) throw failed.reason;
}

/** What a fit's time grows with: readings and bounds. */
const weightOf = ({ packs }: FitTask) =>
  packs.reduce((sum, { years, bounds }) => sum + years.length + bounds.length, 0);
