import type { Plan } from "../src/index.ts";

/** The plan's policy as a policy sheet: what a colleague needs to plan under the same assumptions. */
export function policyCsv(plan: Plan): string {
  const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const rows = Object.entries(plan.policy).filter(([, value]) => value !== null);
  return `${[["key", "value"], ...rows].map(([key, value]) => `${key},${quoted(String(value))}`).join("\r\n")}\r\n`;
}
