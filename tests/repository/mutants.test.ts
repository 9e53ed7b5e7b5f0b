import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";
import { MUTANTS } from "../mutants/mutants.ts";

const ROOT = resolve(import.meta.dirname, "../..");

it("every line that is broken on purpose stands once in its file", () => {
  const times = MUTANTS.map(({ file, from }) => ({
    file,
    from,
    times: readFileSync(resolve(ROOT, file), "utf8").split(from).length - 1,
  }));
  expect(times.filter(({ times }) => times !== 1)).toEqual([]);
});
