import { afterEach, expect, it, vi } from "vitest";
import { note, typed } from "../../cli/print.ts";
import { clearProgress, showProgress } from "../../cli/progress.ts";

const was = [process.stderr.isTTY, process.stderr.columns] as const;
afterEach(() => {
  [process.stderr.isTTY, process.stderr.columns] = was;
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

/** What is written to stderr, which is a terminal of so many columns or none. */
function written(columns: number | null, work: () => void, terminal = "xterm"): string {
  let text = "";
  vi.stubEnv("TERM", terminal);
  vi.spyOn(process.stderr, "write").mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  process.stderr.isTTY = columns !== null;
  process.stderr.columns = columns ?? 0;
  work();
  clearProgress();
  return text;
}

it("progress is one line that makes room for the next and for what is said", () => {
  const said = written(20, () => {
    showProgress("Reading packs.csv, a\u001bb.csv ...");
    showProgress("Planning ...");
    note("Done.");
  });
  expect(said).toBe("\r\u001b[2KReading packs.csv, \r\u001b[2KPlanning ...\r\u001b[2KDone.\n");
});
it("progress moves no cursor by the name of a file", () => {
  expect(written(80, () => showProgress("a\u001b[2Jb"))).toBe("\r\u001b[2Ka [2Jb\r\u001b[2K");
});
it("progress is not written into a pipe or a file", () => {
  expect(written(null, () => showProgress("Planning ..."))).toBe("");
});
it("progress is not written to a terminal that cannot take a line back", () => {
  expect(written(80, () => showProgress("Planning ..."), "dumb")).toBe("");
});
// quoting rules of the POSIX shell command language, 2.2.2
it("typed: words as a shell takes them", () => {
  expect(typed(["wanecast", "plan", "sheets/", "My fleet", "it's"])).toBe(
    "wanecast plan sheets/ 'My fleet' 'it'\\''s'",
  );
});
