import type { Day } from "../calendar/day.ts";

/** A unit carried from one place to another, both by their index. */
export interface Leg {
  from: number;
  to: number;
  day: Day;
}

/** The legs by round: places that are joined by legs, however far around, make one round. */
export function roundsOf(legs: readonly Leg[]): Leg[][] {
  const parent = new Map<number, number>();
  const rootOf = (place: number): number => {
    let at = place;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    return at;
  };
  for (const { from, to } of legs) {
    const [a, b] = [rootOf(from), rootOf(to)];
    if (a !== b) parent.set(Math.max(a, b), Math.min(a, b));
  }
  const rounds = new Map<number, Leg[]>();
  for (const leg of legs) {
    const root = rootOf(leg.from);
    const round = rounds.get(root);
    if (round) round.push(leg);
    else rounds.set(root, [leg]);
  }
  return [...rounds.values()];
}
