import { type Command, InvalidArgumentError, Option } from "commander";

/** Options of the verbs that read sheets, as given. */
export interface SheetOptions {
  asOf?: string;
  policy?: string[];
  dateOrder?: string;
  columns?: string;
}

/** Options of the verbs that print, as JSON too, and write what they print into a folder. */
export interface ResultOptions extends SheetOptions {
  json?: boolean;
  out?: string;
}

/** Options of the verbs that also judge what came out. */
export interface VerbOptions extends ResultOptions {
  failOn?: FailCondition[];
}

/** Conditions that `--fail-on` knows, with what each means. */
export const FAIL_CONDITIONS = {
  late: "an order-by date has already passed",
  short: "half a device or more is expected short in some month although the schedule is followed",
  "set-aside": "a row was set aside",
  warning: "a finding is a warning or an error",
} as const;

export type FailCondition = keyof typeof FAIL_CONDITIONS;

/** Shells that `completion` writes for. */
export const SHELLS = ["bash", "zsh", "fish"] as const;

export type Shell = (typeof SHELLS)[number];

/** Adds the options that say how sheets are read. */
export function addSheetOptions(command: Command): Command {
  return command
    .option("--as-of <date>", "the day to plan from, YYYY-MM-DD (default: the policy sheet's, else today)")
    .option("--policy <key=value>", "a policy value that wins over the sheet's; may be repeated", collect)
    .addOption(
      new Option(
        "--date-order <order>",
        "how to read dates in columns that do not settle their own day/month order",
      ).choices(["dmy", "mdy", "ymd"]),
    )
    .option("--columns <file>", "how to read columns: a file that check --write-columns wrote and you edited");
}

/** Adds the options that say how the result comes out, and what is written with it. */
export function addResultOptions(command: Command, written: string): Command {
  return command
    .option("--json", "print JSON on stdout and nothing else")
    .option("--out <folder>", `write ${written} into this folder`);
}

/** Adds the same, and the conditions that the verb can judge. */
export function addJudgedOptions(command: Command, written: string, conditions: readonly FailCondition[]): Command {
  const meanings = conditions.map((condition) => `${condition} (${FAIL_CONDITIONS[condition]})`).join(", ");
  return addResultOptions(command, written).option(
    "--fail-on <condition>",
    `exit with 4 if met: ${meanings}; may be repeated`,
    (value: string, earlier: FailCondition[] | undefined) => collectConditions(value, earlier, conditions),
  );
}

/** Gathers the values of an option that may be repeated. */
export function collect(value: string, earlier: string[] | undefined): string[] {
  return [...(earlier ?? []), value];
}

/** Gathers whole numbers of months, 1 to 240. */
export function collectMonths(value: string, earlier: number[] | undefined): number[] {
  const months = value.split(",").map((text) => Number(text.trim()));
  if (months.some((one) => !Number.isInteger(one) || one < 1 || one > 240)) {
    throw new InvalidArgumentError("A whole number of months from 1 to 240 was expected.");
  }
  return [...(earlier ?? []), ...months];
}

function collectConditions(
  value: string,
  earlier: FailCondition[] | undefined,
  allowed: readonly FailCondition[],
): FailCondition[] {
  const named = value.split(",").map((name) => {
    const condition = allowed.find((known) => known === name.trim());
    if (condition === undefined) throw new InvalidArgumentError(`Allowed choices are ${allowed.join(", ")}.`);
    return condition;
  });
  return [...(earlier ?? []), ...named];
}
