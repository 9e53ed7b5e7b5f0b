import { POLICY_KEYS, type PolicyChoice, policyChoice, resolvePolicy } from "../src/index.ts";
import { UsageError } from "./exit-codes.ts";
import type { SheetOptions } from "./verb-options.ts";

/**
 * The policy choices of the command line, the weaker first: `--policy`, then the options of their own.
 *
 * @throws UsageError where a key is unknown or a value cannot be used
 */
export function policyOptions({ asOf, policy, dateOrder }: SheetOptions): PolicyChoice[] {
  const choices: PolicyChoice[] = (policy ?? []).map((text) => policyPair(text, "--policy"));
  if (asOf !== undefined) choices.push(policyChoice("as_of", asOf));
  if (dateOrder !== undefined) choices.push({ key: "date_order", value: dateOrder });
  const [problem] = resolvePolicy(choices, 0).problems;
  if (problem) throw new UsageError(`${problem.message} ${problem.fix}`);
  return choices;
}

/**
 * A key with its value, read as a policy sheet's: "95 %" is 0.95 where a share is wanted, "1 Nov 2026" a date.
 *
 * @param option  the option that was given, for the message
 * @throws UsageError where there is no key or no value
 */
export function policyPair(text: string, option: string): PolicyChoice {
  const at = text.indexOf("=");
  if (at < 1) throw new UsageError(`${option} takes KEY=VALUE, such as horizon_months=24, not "${text}".`);
  const choice = { key: text.slice(0, at).trim(), value: text.slice(at + 1).trim() };
  const read = policyChoice(choice.key, choice.value);
  return POLICY_KEYS.some(({ key }) => key === read.key) ? read : choice;
}
