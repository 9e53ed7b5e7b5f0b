import { afterEach, expect, it, vi } from "vitest";
import { suggest } from "../../cli/print.ts";

afterEach(() => vi.restoreAllMocks());

/** What is written to stderr for a suggestion, where the streams are terminals or not. */
function suggested(stdoutIsTerminal: boolean, stderrIsTerminal: boolean): string {
  let text = "";
  vi.spyOn(process.stderr, "write").mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  const was = [process.stdout.isTTY, process.stderr.isTTY] as const;
  [process.stdout.isTTY, process.stderr.isTTY] = [stdoutIsTerminal, stderrIsTerminal];
  suggest("open the page");
  [process.stdout.isTTY, process.stderr.isTTY] = was;
  return text;
}

it("what to do next is told to a person at a terminal, never into a file or a pipe", () => {
  expect(suggested(true, true)).toBe("Next: open the page\n");
  expect(suggested(false, true)).toBe("");
  expect(suggested(true, false)).toBe("");
});
