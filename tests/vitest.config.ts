import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

const root = new URL("..", import.meta.url).pathname;
const each = {
  // modules keep no state, so files of a project share them: to load them anew takes longer than most tests
  isolate: false,
  setupFiles: ["tests/remove-folders.ts"],
  // how long a test takes says nothing of whether it is right, and some machines are three times as slow as others
  testTimeout: 600_000,
  hookTimeout: 600_000,
};

const LONG = ["/tests/world/", "/tests/browser/", "/tests/plan", "/tests/cli/"];

/** Starts with the files that take longest, so that no worker is left alone with one of them at the end. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isIn = (part: string) => sorted.filter(({ moduleId }) => moduleId.includes(part));
    return [...new Set([...LONG.flatMap(isIn), ...sorted])];
  }
}

/**
 * What has to do with the language's own dates, which only the calendar and the reader of workbooks know
 * (tests/repository/imports.test.ts), runs again far east of Greenwich, and half an hour off the full hours to the west;
 * so does what is read and written of dates as text.
 */
const elsewhere = ["Pacific/Auckland", "America/St_Johns"].map((zone) => ({
  root,
  test: {
    name: zone,
    include: [
      "tests/{calendar,fleet,out}/**/*.test.ts",
      "tests/sheets/{rows,text,values}/**/*.test.ts",
      "tests/sheets/{canonical-sheets,correct-cells,dated-columns,earlier-months,read-sheets,workbook}.test.ts",
    ],
    env: { TZ: zone },
    ...each,
  },
}));

export default defineConfig({
  root,
  test: {
    // one more than there are cores: tests in a browser wait for it a third of their time
    maxWorkers: availableParallelism() + 1,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        root,
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          env: { TZ: "UTC" },
          ...each,
        },
      },
      ...elsewhere,
      {
        root,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/find-chromium.ts"],
          ...each,
        },
      },
    ],
  },
});
