import type { Finding } from "../fleet/finding.ts";
import type { Source } from "../fleet/rows.ts";
import { LIFE_FINDING_CODES } from "./finding-codes.ts";

/** A finding about a row, and about further lines of its sheet. */
export function lifeFinding(
  code: keyof typeof LIFE_FINDING_CODES,
  { file, sheet, line }: Source,
  value: string,
  message: string,
  lines: number[] = [],
): Finding {
  const { severity, fix } = LIFE_FINDING_CODES[code];
  return { code, severity, file, sheet, line, lines, column: null, value, message, fix };
}
