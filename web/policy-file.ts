import { guardText, type Plan } from "../src/index.ts";

import { csvRow } from "./csv-row.ts";

/** The plan's policy as a policy sheet: what a colleague needs to plan under the same assumptions. */
export function policyCsv(plan: Plan): string {
  const rows = Object.entries(plan.policy).flatMap(([key, value]) =>
    value === null ? [] : [[key, guardText(String(value))]],
  );
  return `${[["key", "value"], ...rows].map((row) => csvRow(row)).join("\r\n")}\r\n`;
}
