import { readFileSync, statSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { comparePlans, compareText, jsonChunks, type NamedPlan, type Plan, readPlan } from "../../src/index.ts";
import { InputRefused, UsageError } from "../exit-codes.ts";
import { loadPlan } from "../load-plan.ts";
import { policyPair } from "../policy-options.ts";
import { print, stdoutSetting } from "../print.ts";
import { isFolder, whyUnreadable } from "../read-inputs.ts";
import type { ResultOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** Options of `compare`: sheets and printing, and the policy values of the second plan. */
export interface CompareOptions extends ResultOptions {
  against?: string[];
}

/** Two saved plans side by side, or one fleet's sheets under two policies. */
export async function runCompare(inputs: readonly string[], options: CompareOptions): Promise<void> {
  const { a, b, paths } = await plansToCompare(inputs, options);
  const comparison = comparePlans(a, b);
  if (options.out !== undefined) {
    await writeOut(options.out, [{ name: "compare.json", chunks: jsonChunks(comparison) }], paths);
  }
  await print(options.json ? jsonChunks(comparison) : [compareText(comparison, stdoutSetting())]);
}

async function plansToCompare(
  inputs: readonly string[],
  options: CompareOptions,
): Promise<{ a: NamedPlan; b: NamedPlan; paths: string[] }> {
  const saved = inputs.filter((path) => path.toLowerCase().endsWith(".json"));
  const [first, second] = saved;
  if (first !== undefined && second !== undefined && saved.length === 2 && inputs.length === 2) {
    const { against, policy, asOf, dateOrder, columns } = options;
    if (against || policy || asOf || dateOrder || columns) {
      throw new UsageError(
        "Two saved plans are compared as they are: --policy, --against, --as-of, --date-order and --columns are for sheets.",
      );
    }
    const [a, b] = labelsOf(first, second);
    return { a: { label: a, plan: savedPlan(first) }, b: { label: b, plan: savedPlan(second) }, paths: [...inputs] };
  }
  if (saved.length > 0) {
    throw new UsageError("Give two saved plans (.json), or sheets with --against KEY=VALUE; not a mixture.");
  }
  if (!options.against)
    throw new UsageError(`Give two saved plans, or sheets with --against KEY=VALUE.${plansIn(inputs)}`);
  const { policy = [], against, asOf, dateOrder, ...rest } = options;
  const isAsked = new Map(against.map((text) => [policyPair(text, "--against").key, text]));
  // by key: what the second plan is asked for wins over what both are
  const ofB = [
    ...new Map([...policy.map((text) => [policyPair(text, "--policy").key, text] as const), ...isAsked]).values(),
  ];
  if (inputs.includes("-")) throw new UsageError("compare reads its inputs twice and cannot take standard input (-).");
  const one = await loadPlan(inputs, options);
  const other = await loadPlan(
    inputs,
    {
      ...rest,
      policy: ofB,
      ...(asOf === undefined || isAsked.has("as_of") ? {} : { asOf }),
      ...(dateOrder === undefined || isAsked.has("date_order") ? {} : { dateOrder }),
    },
    one,
  );
  return {
    a: { label: policy.join(", ") || "the policy of the sheets", plan: one.plan },
    b: { label: ofB.join(", "), plan: other.plan },
    paths: one.paths,
  };
}

/** What each plan goes by: its file's name, its folder's before it where both have one name, else its path as given. */
function labelsOf(first: string, second: string): [string, string] {
  const inFolder = (path: string) => join(basename(dirname(resolve(path))), basename(path));
  for (const label of [basename, inFolder]) if (label(first) !== label(second)) return [label(first), label(second)];
  return [first, second];
}

/** What to type instead, where folders that hold plans were given. */
function plansIn(inputs: readonly string[]): string {
  const plans = inputs.map((input) => join(input, "plan.json"));
  return inputs.length === 2 && inputs.every(isFolder) && plans.every(isFile)
    ? ` The folders hold plans: wanecast compare ${plans.join(" ")}`
    : "";
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

function savedPlan(path: string): Plan {
  const refuse = (code: string, message: string) => new InputRefused(`${basename(path)}: ${message} [${code}]`);
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch (error) {
    const { code, message } = whyUnreadable(error);
    throw refuse(code, message);
  }
  const read = readPlan(text);
  if (read === null)
    throw refuse("no-plan", "The file holds no plan; give a plan.json as wanecast plan --out writes it.");
  if ("problem" in read) throw refuse("bad-plan", read.problem);
  return read.plan;
}
