import { expect, it } from "vitest";
import { packEvidence } from "../../src/fade/evidence.ts";
import { type Fitter, fitSideBySide } from "../../src/fade/fit-side-by-side.ts";
import { usualPrior } from "../../src/fade/item-prior.ts";
import { type FitMade, type FitTask, isKept } from "../../src/fade/kept-fits.ts";

let priors = 0;

/** A task of so many readings that no other test gives. */
function task(readings: number): FitTask {
  const read = Array.from({ length: readings }, (_, i) => ({ years: i, useYears: i, capacity: 1 }));
  return {
    packs: [packEvidence(read, [])],
    prior: { mean: Float64Array.of(++priors, 77), deviation: Float64Array.of(1) },
  };
}

const readingsOf = ({ packs }: FitTask) => packs[0]!.years.length;
const notKept = (tasks: readonly FitTask[]) => () => tasks.filter((one) => !isKept(one));

/** Fitters that note what they do; `answer` makes the fits. */
function noting(answer: (task: FitTask) => Promise<FitMade>) {
  const noted = { started: 0, ended: 0, busy: 0, mostBusy: 0, readings: [] as number[] };
  const start = (): Fitter => {
    noted.started++;
    return {
      fit: async (one) => {
        noted.readings.push(readingsOf(one));
        noted.mostBusy = Math.max(noted.mostBusy, ++noted.busy);
        const made = await answer(one);
        noted.busy--;
        return made;
      },
      end: () => void noted.ended++,
    };
  };
  return { noted, start };
}

const soon = async (one: FitTask): Promise<FitMade> => {
  await new Promise((resolve) => setTimeout(resolve, 1));
  return { coordinates: [], trust: [new Float64Array(readingsOf(one))] };
};

it("makes every fit once, the longest first, so many at a time as there are processors", async () => {
  const tasks = [task(1), task(4), task(2), task(3), task(5)];
  const { noted, start } = noting(soon);
  const told: string[] = [];
  await fitSideBySide(notKept(tasks), 2, start, (done, of) => told.push(`${done} of ${of}`));
  expect(noted).toEqual({ started: 2, ended: 2, busy: 0, mostBusy: 2, readings: [5, 4, 3, 2, 1] });
  expect(notKept(tasks)()).toEqual([]);
  expect(told).toEqual(["0 of 5", "0 of 5", "1 of 5", "2 of 5", "3 of 5"]);
});

it("asks again for those that borrow", async () => {
  const [first, second] = [
    [task(3), task(4)],
    [task(1), task(2)],
  ];
  const { noted, start } = noting(soon);
  await fitSideBySide(() => (notKept(first)().length > 0 ? notKept(first)() : notKept(second)()), 4, start);
  expect(noted.readings).toEqual([4, 3, 2, 1]);
  expect(notKept([...first, ...second])()).toEqual([]);
});

it("makes one fit alone where it stands, and starts nothing for it", async () => {
  const { noted, start } = noting(soon);
  const prior = { ...usualPrior(), mean: usualPrior().mean.fill(0.123) };
  const alone = { packs: [packEvidence([], [])], prior };
  await fitSideBySide(notKept([alone]), 8, start);
  expect(noted.started).toBe(0);
  expect(isKept(alone)).toBe(true);
});

it("starts nothing on one processor", async () => {
  const { noted, start } = noting(soon);
  await fitSideBySide(notKept([task(2), task(3)]), 1, start);
  expect(noted.started).toBe(0);
});

it("leaves to the plan what a fitter could not make, and stops all fitters", async () => {
  const tasks = [task(1), task(2), task(3), task(4)];
  const { noted, start } = noting((one) => (readingsOf(one) === 4 ? Promise.reject(new Error("gone")) : soon(one)));
  await fitSideBySide(notKept(tasks), 2, start);
  expect(notKept(tasks)().map(readingsOf)).toEqual([1, 2, 4]);
  expect(noted).toMatchObject({ started: 2, ended: 2, readings: [4, 3] });
});
