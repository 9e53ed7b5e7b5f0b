import { resolvePolicy } from "../../fleet/resolve-policy.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Entry } from "../rows/entry.ts";

/** Findings for policy rows whose key is none or whose value cannot be used: the plan goes by the default there. */
export function findUnusablePolicy(byKind: ReadonlyMap<string, Entry[]>, log: FindingLog): void {
  for (const { values } of byKind.get("policy") ?? []) {
    const [problem] = resolvePolicy([{ key: String(values.key), value: String(values.value) }], 0).problems;
    if (!problem) continue;
    const { file, sheet, line } = values.source;
    log.add(
      "policy-unusable",
      { file, sheet, line, column: null, value: String(values.value) },
      () => ({ message: `${problem.message} It changes nothing.`, fix: problem.fix }),
      String(line),
    );
  }
}
