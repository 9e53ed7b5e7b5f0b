import { type Plan, planSchema } from "./plan-schema.ts";

const PLAN_FORMAT = "wanecast.plan/1";

/**
 * A saved plan from the text of its plan.json.
 *
 * @returns the plan; null where the text is no plan at all; or what is wrong with it
 */
export function readPlan(text: string): { plan: Plan } | { problem: string } | null {
  let saved: unknown;
  try {
    // some editors write a byte order mark
    saved = JSON.parse(text.replace(/^\ufeff/, ""));
  } catch {
    return null;
  }
  const format = (saved as { format?: unknown } | null)?.format;
  if (typeof format !== "string" || !format.startsWith("wanecast.plan/")) return null;
  if (format !== PLAN_FORMAT) {
    return { problem: `The plan's format is ${format}, not ${PLAN_FORMAT}: make it anew from its sheets.` };
  }
  const read = planSchema.safeParse(saved);
  if (read.success) return { plan: read.data };
  const { path, message } = read.error.issues[0]!;
  const where = path.join(".") || "its top";
  return { problem: `The plan does not hold to its format at ${where}: ${message}. Make it anew from its sheets.` };
}
