import type { Plan } from "./plan-schema.ts";
import { jsonChunks } from "./write-json.ts";

/** The text of plan.json in chunks, to be written as a stream; the same plan gives the same bytes. */
export function writePlanJson(plan: Plan): Iterable<string> {
  return jsonChunks(plan);
}
