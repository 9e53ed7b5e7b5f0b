import * as z from "zod";
import { checkSchema } from "./check-schema.ts";
import { planSchema } from "./plan-schema.ts";

/** JSON Schema (draft 2020-12) of `wanecast.plan/1`, made from the zod schema; a copy stands in plan.schema.json. */
export function planJsonSchema(): object {
  return { title: "wanecast.plan/1", ...z.toJSONSchema(planSchema) };
}

/** JSON Schema (draft 2020-12) of `wanecast.check/1`; a copy stands in check.schema.json. */
export function checkJsonSchema(): object {
  return { title: "wanecast.check/1", ...z.toJSONSchema(checkSchema) };
}
