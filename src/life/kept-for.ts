/** What was worked out for a thing, and from what besides. */
interface Kept<Result> {
  restsOn: readonly unknown[];
  result: Result;
}

/**
 * Keeps the last result for each of some things, for as long as what else it rests on is the same. A planner who tries
 * another end of life on the same sheets then waits only for what hangs on it.
 *
 * @returns a function of the thing, of what else the result rests on (compared one by one), and of how to work it out;
 *          nobody may change what it gives
 */
export function keptFor<Thing extends object, Result>(): (
  thing: Thing,
  restsOn: readonly unknown[],
  compute: () => Result,
) => Result {
  const known = new WeakMap<Thing, Kept<Result>>();
  return (thing, restsOn, compute) => {
    const kept = known.get(thing);
    if (kept?.restsOn.every((one, index) => one === restsOn[index])) return kept.result;
    const result = compute();
    known.set(thing, { restsOn, result });
    return result;
  };
}
