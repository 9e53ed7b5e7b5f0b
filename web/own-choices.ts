import { inForce, replan } from "./plan-in-force.ts";
import { choicesInLink } from "./policy-link.ts";
import { mention } from "./status.ts";
import { say } from "./strings.ts";

/** Sets a policy value; an empty one leaves it to the sheets again. */
export async function setChoice(key: string, value: string): Promise<void> {
  const { choices } = inForce();
  if (value === "") choices.delete(key);
  else choices.set(key, value);
  await replan();
}

export async function resetChoices(): Promise<void> {
  const { choices } = inForce();
  choices.clear();
  await replan();
}

/** Plans with the assumptions that came with the page's address. */
export async function takeLink(): Promise<void> {
  const taken = choicesFromLink();
  if (taken === 0) return;
  if (inForce().plan === null || (await replan())) mention(say.intake.taken(taken, "link"));
}

/** Sets the assumptions in the page's address, which is then cleared so that a reload does not bring them back; gives their number. */
export function choicesFromLink(): number {
  const { choices, words } = inForce();
  const keys = words.policy.map(({ key }) => key);
  const found = choicesInLink(location.hash, keys);
  if (found === null) return 0;
  history.replaceState(null, "", location.pathname + location.search);
  for (const [key, value] of found) choices.set(key, value);
  return found.length;
}
