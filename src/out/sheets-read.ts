import { counted, countText } from "../fleet/count-text.ts";
import type { Plan } from "./plan-schema.ts";

/** "3 tables with 1,423 rows: 1,418 used, 5 set aside. Findings: 2 errors, 3 warnings, 1 note." */
export function sheetsRead(plan: Pick<Plan, "inputs" | "findings">): string {
  const sum = (of: (input: Plan["inputs"][number]) => number) => plan.inputs.reduce((all, input) => all + of(input), 0);
  const found = (severity: string) => plan.findings.filter((finding) => finding.severity === severity).length;
  const rows =
    plan.inputs.length === 0
      ? "No table was read."
      : `${counted(plan.inputs.length, "table")} with ${counted(
          sum((i) => i.rows),
          "row",
        )}: ${countText(sum((i) => i.used))} used, ${countText(sum((i) => i.setAside))} set aside.`;
  const findings = `Findings: ${counted(found("error"), "error")}, ${counted(found("warning"), "warning")}, ${counted(found("info"), "note")}.`;
  return `${rows} ${findings}`;
}
