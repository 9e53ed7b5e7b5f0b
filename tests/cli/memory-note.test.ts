import { expect, it } from "vitest";
import { memoryNote, readingNote } from "../../cli/memory-note.ts";
import { folderWith } from "../folders.ts";
import { wanecast } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

const MB = 1e6;

// Measured with the fleets of `npm run bench -- scale`: the heap within which such a plan ran, and one within which it
// ended in Node's own abort.
it.each([
  [{ packs: 10_000, rows: 115_000, months: 60 }, 600, 280],
  [{ packs: 10_000, rows: 115_000, months: 12 }, 400, 200],
  [{ packs: 25_000, rows: 290_000, months: 60 }, 1600, 800],
])("memoryNote for %o: nothing with %i MB, a word with %i MB", (size, enough, tooLittle) => {
  expect(memoryNote(size, enough * MB)).toBeNull();
  expect(memoryNote(size, tooLittle * MB)).toContain("NODE_OPTIONS=--max-old-space-size=");
});
// By hand: 250,000 packs * (20 kB + 60 * 0.4 kB) = 11 GB, and 1,000,000 rows * 0.5 kB; half as much more is 17.25 GB
it("memoryNote says what a national fleet may need and how to give it", () => {
  expect(memoryNote({ packs: 250_000, rows: 1_000_000, months: 60 }, 4345 * MB)).toBe(
    "A plan of 250,000 packs over 60 months may need some 11.5 GB of memory, and Node stops at 4.3 GB. If it does, run this again with NODE_OPTIONS=--max-old-space-size=18000 set, on a machine that has as much.",
  );
});

const sheet = (name: string, megabytes: number) => ({ name, bytes: { length: megabytes * MB } });
// Measured with `check --json` of the same fleets' sheets, and of one's clean workbook
it.each([
  [[sheet("a.csv", 19)], 400, 250],
  [[sheet("a.csv", 2), sheet("b.tsv", 1.7)], 100, 60],
  [[sheet("fleet.xlsx", 16.5)], 800, 500],
])("readingNote for %o: nothing with %i MB, a word with %i MB", (files, enough, tooLittle) => {
  expect(readingNote(files, enough * MB)).toBeNull();
  expect(readingNote(files, tooLittle * MB)).toContain("NODE_OPTIONS=--max-old-space-size=");
});
// By hand: 300 MB * 18 = 5.4 GB; half as much more is 8.1 GB
it("readingNote says what the sheets may need and the ways out", () => {
  expect(readingNote([sheet("a.csv", 200), sheet("b.csv", 100)], 4345 * MB)).toBe(
    "Reading 300 MB of sheets may need some 5.4 GB of memory, and Node stops at 4.3 GB. If it does, run this again with NODE_OPTIONS=--max-old-space-size=9000 set, on a machine that has as much, or hand in the sheets of some items at a time.",
  );
});
// By hand: 250,000 packs * 20 kB and 1,000,000 rows * 0.5 kB
it("memoryNote names no months where nothing is planned, as in prove", () => {
  expect(memoryNote({ packs: 250_000, rows: 1_000_000, months: 0 }, 4345 * MB)).toMatch(
    /^A forecast of 250,000 packs may need some 5\.5 GB of memory, and Node stops at 4\.3 GB\. /,
  );
});
it("plan says so on stderr before it plans, by the limit that Node has, and plans all the same", () => {
  const packs = Array.from({ length: 2600 }, (_, n) => `S${n},shelf pack\n`).join("");
  const folder = folderWith({ ...SMALL_FLEET, "more.csv": `serial,item\n${packs}` });
  const env = { NODE_OPTIONS: "--max-old-space-size=64 --max-semi-space-size=1" };
  const { code, stdout, stderr } = wanecast(["orders", folder, "--json"], { env });
  expect(stderr).toMatch(/^A plan of 2,603 packs over 18 months may need some 0\.1 GB of memory/);
  expect([code, JSON.parse(stdout).format]).toEqual([0, "wanecast.plan/1"]);
});
