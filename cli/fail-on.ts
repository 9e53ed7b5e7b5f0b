import type { Plan, Reading } from "../src/index.ts";
import { EXIT } from "./exit-codes.ts";
import { note } from "./print.ts";
import { FAIL_CONDITIONS, type FailCondition } from "./verb-options.ts";

/** Expected devices short from which a month counts as short: less rounds to none. */
const SHORT_FROM = 0.5;

/** What conditions look at beside the sheets: a plan, or the part of one that a verb made. */
type Judged = Pick<Plan, "findings"> & Partial<Pick<Plan, "orders" | "short">>;

/**
 * Sets the exit code to 4 and says why, where one of the conditions is met.
 *
 * @param plan  null where nothing was planned: late and short are then never met
 */
export function failOn(conditions: readonly FailCondition[], reading: Reading, plan: Judged | null): void {
  const met = [...new Set(conditions)].filter((condition) => isMet[condition](reading, plan));
  for (const condition of met) note(`--fail-on ${condition}: ${FAIL_CONDITIONS[condition]}.`);
  if (met.length > 0) process.exitCode = EXIT.conditionMet;
}

const isMet: Record<FailCondition, (reading: Reading, plan: Judged | null) => boolean> = {
  late: (_, plan) => plan?.orders?.some((line) => line.late) ?? false,
  short: (_, plan) => plan?.short?.some((month) => month.withSchedule.expected >= SHORT_FROM) ?? false,
  "set-aside": ({ setAside }) => setAside.length > 0,
  // the stages after reading find things, too
  warning: (reading, plan) => (plan ?? reading).findings.some(({ severity }) => severity !== "info"),
};
