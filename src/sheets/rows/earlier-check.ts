import type { FindingLog } from "../finding-log.ts";
import type { Entry } from "./entry.ts";

/**
 * Takes out of use what an earlier check of a place found, with a finding.
 *
 * @param column  1-based, that tells the day of the check; null where none does
 */
export function dropEarlierCheck(
  { state, row, values }: Entry,
  column: number | null,
  message: string,
  log: FindingLog,
) {
  state.drop(row, "earlier-check", message);
  log.add("earlier-check", { ...values.source, column, value: null }, () => ({ message }));
}
