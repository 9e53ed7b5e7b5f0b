import type { Day } from "../calendar/day.ts";
import { nearestWord } from "./nearest-word.ts";
import { defaultPolicy, type Policy } from "./policy.ts";
import { POLICY_KEYS, type PolicyKey, readPolicyValue } from "./policy-keys.ts";
import { shortened } from "./shortened.ts";

/** One choice as text, from a sheet or an option. */
export interface PolicyChoice {
  key: string;
  value: string;
}

/** What `resolvePolicy` could not use, with why. */
export interface PolicyProblem extends PolicyChoice {
  message: string;
  fix: string;
}

/**
 * Fills a policy from choices; later choices win over earlier ones, all win over the defaults. A blank value chooses
 * nothing, and what the default is called goes back to it, as does "none" where it is no value.
 *
 * @param choices  from the weakest to the strongest: sheet rows, then `--policy`, then options
 * @param today    as-of where no choice names it
 * @returns the policy and every choice that was not used
 */
export function resolvePolicy(
  choices: readonly PolicyChoice[],
  today: Day,
): { policy: Policy; problems: PolicyProblem[] } {
  const problems: PolicyProblem[] = [];
  const chosen: Partial<Record<keyof Policy, unknown>> = {};
  const byDefault = defaultPolicy(today);
  for (const choice of choices) {
    const read = readPolicyValue(choice.key.trim().toLowerCase(), choice.value);
    if (read === null) problems.push(unknownKey(choice));
    else if (choice.value.trim() === "") continue;
    else if (isDefault(choice.value, read.key, byDefault)) delete chosen[read.key.field];
    else if ("value" in read) chosen[read.key.field] = read.value;
    else {
      const { key, unit, default: usual } = read.key;
      const message = `"${shortened(choice.value)}" cannot be used for ${key}: ${read.expected} was expected.`;
      const fix = `Write, for example, ${read.example} (${unit}); the default is ${usual}.`;
      problems.push({ ...choice, message, fix });
    }
  }
  const policy = { ...byDefault, ...chosen } as Policy;
  if (chosen.minLifeDays === undefined) policy.minLifeDays = policy.swapBeforeExpiryDays;
  return { policy, problems };
}

/** True for what people call the default, and for "none" where that is what it comes to. */
function isDefault(text: string, key: PolicyKey, byDefault: Policy): boolean {
  const value = text.trim().toLowerCase();
  return value === key.default || (value === "none" && byDefault[key.field] === null);
}

function unknownKey(choice: PolicyChoice): PolicyProblem {
  const keys = POLICY_KEYS.map(({ key }) => key);
  const meant = nearestWord(choice.key.trim().toLowerCase(), keys);
  const hint = meant === null ? "" : `Did you mean ${meant}? `;
  return {
    ...choice,
    message: `"${shortened(choice.key)}" is no policy key.`,
    fix: `${hint}Use one of ${keys.join(", ")}.`,
  };
}
