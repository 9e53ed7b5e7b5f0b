import { rmSync } from "node:fs";

const SIGNALS = ["SIGINT", "SIGTERM"] as const;

/**
 * Removes files, given as they come up, where the program is told to stop (Ctrl-C), and lets the signal end it as it
 * would have.
 *
 * @returns forgets about it
 */
export function removedWhenStopped(paths: Iterable<string>): () => void {
  const stop = (signal: NodeJS.Signals) => {
    for (const path of paths) rmSync(path, { force: true });
    forget();
    process.kill(process.pid, signal);
  };
  const forget = () => {
    for (const signal of SIGNALS) process.off(signal, stop);
  };
  for (const signal of SIGNALS) process.on(signal, stop);
  return forget;
}
