/** Says what is being worked on while it is, on a terminal only, and takes the line away afterwards. */
export function withProgress<Result>(text: string, work: () => Result): Result {
  if (!process.stderr.isTTY) return work();
  process.stderr.write(text);
  try {
    return work();
  } finally {
    process.stderr.write("\r\u001b[2K");
  }
}
