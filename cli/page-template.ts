import { readFileSync } from "node:fs";
import { join } from "node:path";

/** The empty page, which the build leaves beside the program. */
export function pageTemplate(): string {
  return readFileSync(join(__dirname, "page.html"), "utf8");
}
