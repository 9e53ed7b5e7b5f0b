import type { Reading } from "../src/index.ts";
import { say } from "./strings.ts";

/** How many rows of how many files were read, and what became of them. */
export function rowsRead({ inputs }: Reading): string {
  const sum = (of: "rows" | "used" | "setAside") => inputs.reduce((all, input) => all + input[of], 0);
  const files = new Set(inputs.map(({ file }) => file)).size;
  return say.sheets.lead(sum("rows"), sum("used"), sum("setAside"), files);
}
