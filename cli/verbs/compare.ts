import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { comparePlans, compareText, jsonChunks, type NamedPlan, readPlan } from "../../src/index.ts";
import { InputRefused, UsageError } from "../exit-codes.ts";
import { loadPlan } from "../load-plan.ts";
import { note, print, stdoutSetting } from "../print.ts";
import type { SheetOptions } from "../verb-options.ts";
import { writeFiles } from "../write-files.ts";

/** Options of `compare`: sheets and printing, and the policy values of the second plan. */
export interface CompareOptions extends SheetOptions {
  against?: string[];
  json?: boolean;
  out?: string;
}

/** Two saved plans side by side, or one fleet's sheets under two policies. */
export async function runCompare(inputs: readonly string[], options: CompareOptions): Promise<void> {
  const { a, b, paths } = await plansToCompare(inputs, options);
  const comparison = comparePlans(a, b);
  if (options.out !== undefined) {
    writeFiles(options.out, [{ name: "compare.json", chunks: jsonChunks(comparison) }], paths);
    note(`Written to ${options.out}: compare.json.`);
  }
  await print(options.json ? jsonChunks(comparison) : [compareText(comparison, stdoutSetting())]);
}

async function plansToCompare(
  inputs: readonly string[],
  options: CompareOptions,
): Promise<{ a: NamedPlan; b: NamedPlan; paths: string[] }> {
  const saved = inputs.map(savedPlan);
  const [a, b] = saved;
  if (a && b && saved.length === 2) {
    if (options.against || options.policy || options.asOf) {
      throw new UsageError("Two saved plans are compared as they are: --policy, --against and --as-of are for sheets.");
    }
    return { a, b, paths: [...inputs] };
  }
  if (saved.some((plan) => plan !== null)) {
    throw new UsageError("Give two saved plans, or sheets with --against KEY=VALUE; not a mixture.");
  }
  if (!options.against) throw new UsageError("Give two saved plans, or sheets with --against KEY=VALUE.");
  if (inputs.includes("-")) throw new UsageError("compare reads its inputs twice and cannot take standard input (-).");
  const first = await loadPlan(inputs, options);
  const second = await loadPlan(inputs, { ...options, policy: [...(options.policy ?? []), ...options.against] });
  return {
    a: { label: options.policy?.join(", ") ?? "the policy of the sheets", plan: first.plan },
    b: { label: options.against.join(", "), plan: second.plan },
    paths: first.paths,
  };
}

function savedPlan(path: string): NamedPlan | null {
  if (!path.toLowerCase().endsWith(".json")) return null;
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch {
    throw new InputRefused(`${basename(path)}: The file cannot be read. [unreadable]`);
  }
  const read = readPlan(text);
  if (read === null) throw new InputRefused(`${basename(path)}: The file holds no plan. [no-plan]`);
  if ("problem" in read) throw new InputRefused(`${basename(path)}: ${read.problem} [bad-plan]`);
  return { label: basename(path), plan: read.plan };
}
