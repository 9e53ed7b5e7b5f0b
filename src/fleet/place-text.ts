import type { Source } from "./rows.ts";

/**
 * Where in the sheets something stands: "packs.csv, line 14", "register.xlsx, tab Fleet, line 17".
 *
 * @param line  null for the whole file or tab
 */
export function placeText({ file, sheet, line }: Omit<Source, "line"> & { line: number | null }): string {
  return [
    file === "-" ? "standard input" : file,
    ...(sheet === null ? [] : [`tab ${sheet}`]),
    ...(line === null ? [] : [`line ${line}`]),
  ].join(", ");
}
