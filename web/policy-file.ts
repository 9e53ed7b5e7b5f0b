import type { Plan } from "../src/index.ts";

import { csvRow } from "./csv-row.ts";

/** The plan's policy as a policy sheet: what a colleague needs to plan under the same assumptions. */
export function policyCsv(plan: Plan): string {
  const rows = Object.entries(plan.policy).filter(([, value]) => value !== null);
  return `${[["key", "value"], ...rows].map((row) => csvRow(row)).join("\r\n")}\r\n`;
}
