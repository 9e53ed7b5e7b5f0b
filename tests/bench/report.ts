/** A measure beside its bar. */
export interface Measure {
  what: string;
  figure: number;
  unit: string;
  bar: number;
}

/** The middle of some figures. */
export function median(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

/** Milliseconds that some work takes. */
export async function msOf(work: () => unknown): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

/**
 * How many times longer ours takes than theirs: medians of runs that take turns, so that both meet the same machine.
 * The first turn warms both up and is not counted.
 */
export async function ratio(ours: () => unknown, theirs: () => unknown, turns: number) {
  const ourMs: number[] = [];
  const theirMs: number[] = [];
  for (let turn = 0; turn <= turns; turn++) {
    const their = await msOf(theirs);
    const our = await msOf(ours);
    if (turn === 0) continue;
    theirMs.push(their);
    ourMs.push(our);
  }
  return { ours: median(ourMs), theirs: median(theirMs), ratio: median(ourMs) / median(theirMs) };
}

/** One line for a measure: the figure, the bar and whether it is met. */
export function lineOf({ what, figure, unit, bar }: Measure): string {
  return `${figure <= bar ? "met   " : "MISSED"}  ${what}: ${figure.toFixed(2)} ${unit} (bar ${bar})`;
}
