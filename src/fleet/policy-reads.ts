import type { Policy } from "./policy.ts";

/** Keeps the last result of a computation for as long as nothing that it rests on has changed. */
export type Remembered = <Result>(
  name: string,
  restsOn: readonly unknown[],
  policy: Policy,
  compute: (policy: Policy) => Result,
) => Result;

interface Memory {
  restsOn: readonly unknown[];
  result: unknown;
  /** The policy that the computation sees; it is given another only where the keys that were read agree. */
  seen: Policy;
  read: Map<keyof Policy, unknown>;
}

/**
 * A memory for the stages of one pipeline. A stage is computed again where one of the things in `restsOn` is another
 * object, or where a policy value that it read has changed. What it reads is noted as it reads, also by functions that
 * it returned and that are called later, so that no list of keys can fall behind the code. A stage must hang on
 * nothing but `restsOn` and the policy handed to it, and nobody may change its result.
 */
export function rememberStages(): Remembered {
  const memories = new Map<string, Memory>();
  return <Result>(name: string, restsOn: readonly unknown[], policy: Policy, compute: (policy: Policy) => Result) => {
    const known = memories.get(name);
    if (known && isStill(known, restsOn, policy)) {
      known.seen = policy;
      return known.result as Result;
    }
    const memory: Memory = { restsOn, result: null, seen: policy, read: new Map() };
    const result = compute(watched(memory));
    memory.result = result;
    memories.set(name, memory);
    return result;
  };
}

function isStill({ restsOn, read }: Memory, now: readonly unknown[], policy: Policy): boolean {
  return restsOn.every((thing, index) => thing === now[index]) && [...read].every(([key, was]) => policy[key] === was);
}

/** The policy, noting which of its values are looked at. */
function watched(memory: Memory): Policy {
  const keys = Object.keys(memory.seen) as (keyof Policy)[];
  return Object.defineProperties(
    {},
    Object.fromEntries(
      keys.map((key) => [
        key,
        {
          enumerable: true,
          get: () => {
            const value = memory.seen[key];
            memory.read.set(key, value);
            return value;
          },
        },
      ]),
    ),
  ) as Policy;
}
