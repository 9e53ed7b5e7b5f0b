import { jsonChunks, packsCsv, packsText } from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { loadPlan } from "../load-plan.ts";
import { planPart } from "../plan-part.ts";
import { print, stdoutSetting, suggest, typed } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** Which batteries are due, when, why and how sure. */
export async function runPacks(inputs: readonly string[], options: VerbOptions): Promise<void> {
  const { reading, plan, paths } = await loadPlan(inputs, options);
  if (options.out !== undefined) {
    await writeOut(options.out, [{ name: "packs.csv", chunks: [packsCsv(plan)] }], paths);
  }
  const json = () => jsonChunks(planPart(plan, ["fadeGroups", "packs", "suddenFailures", "earlySigns"]));
  await print(options.json ? json() : [packsText(plan, stdoutSetting())]);
  suggest(`${typed(["wanecast", "prove", ...inputs])} says how far such dates came true before`);
  failOn(options.failOn ?? [], reading, plan);
}
