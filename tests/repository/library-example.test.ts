import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");

it("DEVELOPERS.md: the example of the library runs as it stands, on the built library", () => {
  const section = readFileSync(resolve(ROOT, "DEVELOPERS.md"), "utf8").split("\n## As a library\n")[1]!;
  const code = /```js\n(.*?)```/s.exec(section)![1]!;
  // "wanecast" is found by the package's own name; the code is run from its root
  const told = execFileSync(process.execPath, ["--input-type=module", "--eval", code], { cwd: ROOT, encoding: "utf8" });
  // By hand: expiry 2027-03-31 less 14 days is 17 March; a month's needs fall on its first day, 1 March, less 14 days
  // of safety and 30 days of lead time is 44 days before: 16 January. Two pads expire, and no use is known.
  expect(told).toBe("2027-01-16 2 adult pads\n");
});
