import { readFileSync } from "node:fs";
import { join } from "node:path";
import { embedInPage, type Plan, type Reading } from "../src/index.ts";

/**
 * The page with a plan and its fleet's rows inside; null where they are longer than any text can be.
 *
 * @param template  the empty page
 */
export function pageWith(plan: Plan, reading: Reading, template = pageTemplate()): string | null {
  try {
    return embedInPage(template, plan, reading);
  } catch (error) {
    if (error instanceof RangeError && error.message === "Invalid string length") return null;
    throw error;
  }
}

/** The empty page, which the build leaves beside the program. */
function pageTemplate(): string {
  return readFileSync(join(__dirname, "page.html"), "utf8");
}
